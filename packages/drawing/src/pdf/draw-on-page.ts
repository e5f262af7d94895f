import { degrees, LineCapStyle, type PDFFont, type PDFPage, rgb } from 'pdf-lib';
import { arrowHead, tick } from '../scene/arrow.js';
import { textBox } from '../scene/bounds.js';
import { hatchLines } from '../scene/hatch.js';
import type { Item, Scene, SheetPoint } from '../scene/scene.js';
import { walk } from '../scene/walk.js';
import { margin, type } from '../sheet/sizes.js';
import { fixed } from '../svg/fixed.js';
import { dashes, hatchSpacing, lineWeights } from '../svg/line-weights.js';
import type { Palette } from '../svg/palette.js';
import { arrowLength, pair, pathData } from '../svg/shape-data.js';
import { inLatin, outOfLatin } from './in-latin.js';

const pointsPerMm = 72 / 25.4;

interface Pen {
  readonly page: PDFPage;
  readonly fonts: { readonly normal: PDFFont; readonly bold: PDFFont };
  readonly palette: Palette;
  readonly origin: { readonly left: number; readonly top: number; readonly height: number };
}

/** Draws a scene's shapes as lines, fills and text of a page: nothing is turned into pixels. */
export function drawOnPage(
  page: PDFPage,
  scene: Scene,
  fonts: Pen['fonts'],
  palette: Palette,
  origin: Pen['origin'],
): void {
  const pen: Pen = { page, fonts, palette, origin };
  const sheet = [
    { x: 0, y: 0 },
    { x: scene.width, y: 0 },
    { x: scene.width, y: scene.height },
    { x: 0, y: scene.height },
  ];
  trace(pen, closed(sheet), { fill: palette.paper });
  const shapes = [...walk(scene.items)].flatMap((item) => (item.kind === 'group' ? [] : [item]));
  for (const shape of shapes) drawShape(pen, shape);
  if (shapes.some((s) => s.kind === 'text' && outOfLatin(s.text))) drawShape(pen, lettersMissing(scene));
}

/** Said on the page itself: a reader of the paper has nothing else. */
const lettersMissing = (scene: Scene): Shape => ({
  kind: 'text',
  key: 'letters missing',
  tone: 'danger',
  at: { x: margin, y: scene.height - margin / 3 },
  text: 'Some letters of this plan cannot be printed here: “?” stands for each. Save the drawing as SVG or PNG to have them.',
  size: type.small,
  anchor: 'start',
  weight: 'bold',
});

type Shape = Exclude<Item, { kind: 'group' }>;

const closed = (points: readonly SheetPoint[]): string => `M${points.map(pair).join('L')}Z`;

function drawShape(pen: Pen, item: Shape): void {
  const ink = pen.palette.inks[item.tone].line;
  if (item.kind === 'text') {
    drawText(pen, item, ink);
    return;
  }
  const stroke = {
    line: ink,
    width: item.width ?? lineWeights[item.tone],
    ...('dash' in item && item.dash !== undefined ? { dash: dashes[item.dash] } : {}),
  };
  if (item.kind === 'line') drawLine(pen, item, stroke);
  else drawArea(pen, item, stroke);
}

function drawArea(pen: Pen, item: Exclude<Shape, { kind: 'text' | 'line' }>, stroke: Stroke): void {
  const { solid, light } = pen.palette.inks[item.tone];
  const outline =
    item.kind === 'circle'
      ? circlePath(item.center, item.radius)
      : item.kind === 'path'
        ? pathData(item)
        : closed(item.points);
  switch (item.fill) {
    case 'none':
      trace(pen, outline, stroke);
      break;
    case 'solid':
      trace(pen, outline, { ...stroke, fill: solid });
      break;
    case 'light':
      trace(pen, outline, { ...stroke, fill: light });
      break;
    case 'hatch':
    case 'cross': {
      trace(pen, outline, { fill: light });
      const points = item.kind === 'circle' ? circlePoints(item.center, item.radius) : item.points;
      for (const slope of item.fill === 'cross' ? ([1, -1] as const) : ([1] as const)) {
        for (const [from, to] of hatchLines(points, hatchSpacing, slope))
          trace(pen, `M${pair(from)}L${pair(to)}`, { ...stroke, width: 0.25 });
      }
      trace(pen, outline, stroke);
    }
  }
}

interface Stroke {
  readonly line?: string;
  readonly fill?: string;
  readonly width?: number;
  readonly dash?: readonly number[];
}

function trace({ page, origin }: Pen, data: string, stroke: Stroke): void {
  page.drawSvgPath(data, {
    x: origin.left * pointsPerMm,
    y: (origin.height - origin.top) * pointsPerMm,
    scale: pointsPerMm,
    ...(stroke.fill === undefined ? {} : { color: color(stroke.fill) }),
    ...(stroke.line === undefined
      ? { borderWidth: 0 }
      : {
          borderColor: color(stroke.line),
          borderWidth: stroke.width ?? 0.2,
          borderLineCap: LineCapStyle.Round,
          ...(stroke.dash === undefined ? {} : { borderDashArray: [...stroke.dash] }),
        }),
  });
}

function drawLine(pen: Pen, item: Extract<Item, { kind: 'line' }>, stroke: Stroke): void {
  trace(pen, `M${pair(item.from)}L${pair(item.to)}`, stroke);
  if (item.head === undefined) return;
  const ends: readonly (readonly [SheetPoint, SheetPoint])[] = item.head.startsWith('both')
    ? [
        [item.from, item.to],
        [item.to, item.from],
      ]
    : [[item.from, item.to]];
  for (const [from, to] of ends) {
    if (item.head.endsWith('arrow') || item.head.endsWith('arrows'))
      trace(pen, closed(arrowHead(from, to, arrowLength(item))), { fill: stroke.line ?? '#000000' });
    else {
      const [a, b] = tick(to, 2);
      trace(pen, `M${pair(a)}L${pair(b)}`, {
        line: stroke.line ?? '#000000',
        width: lineWeights[item.tone] * 1.8,
      });
    }
  }
}

function drawText(pen: Pen, item: Extract<Item, { kind: 'text' }>, ink: string): void {
  const { page, origin, fonts, palette } = pen;
  if (item.halo === true) {
    const b = textBox(item);
    const box = [
      { x: b.left - 0.3, y: b.top - 0.3 },
      { x: b.right + 0.3, y: b.top - 0.3 },
      { x: b.right + 0.3, y: b.bottom },
      { x: b.left - 0.3, y: b.bottom },
    ];
    trace(pen, closed(box), { fill: palette.paper });
  }
  const font = item.weight === 'bold' ? fonts.bold : fonts.normal;
  const words = inLatin(item.text);
  const size = item.size * pointsPerMm;
  const before = { start: 0, middle: 0.5, end: 1 }[item.anchor] * font.widthOfTextAtSize(words, size);
  const turn = ((item.turn ?? 0) * Math.PI) / 180;
  page.drawText(words, {
    x: (origin.left + item.at.x) * pointsPerMm - before * Math.cos(turn),
    y: (origin.height - origin.top - item.at.y) * pointsPerMm + before * Math.sin(turn),
    size,
    font,
    color: color(ink),
    rotate: degrees(-(item.turn ?? 0)),
  });
}

const circlePoints = (center: SheetPoint, radius: number): readonly SheetPoint[] =>
  Array.from({ length: 48 }, (_, i) => ({
    x: center.x + radius * Math.cos((i * Math.PI) / 24),
    y: center.y + radius * Math.sin((i * Math.PI) / 24),
  }));

const circlePath = (c: SheetPoint, r: number): string =>
  `M${fixed(c.x - r)},${fixed(c.y)}A${fixed(r)},${fixed(r)} 0 1 0 ${fixed(c.x + r)},${fixed(c.y)}A${fixed(r)},${fixed(r)} 0 1 0 ${fixed(c.x - r)},${fixed(c.y)}Z`;

const color = (hex: string) => {
  const part = (from: number) => Number.parseInt(hex.slice(from, from + 2), 16) / 255;
  return rgb(part(1), part(3), part(5));
};

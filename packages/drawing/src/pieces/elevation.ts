import { type Message, term } from '@cribwright/messages';
import { placeLabels } from '../labels/place-labels.js';
import { shapeBoxes, textBoxes, thinLines } from '../labels/surroundings.js';
import { withoutRoom } from '../labels/without-room.js';
import { headingOf } from '../look/heading-of.js';
import type { Look } from '../look/look.js';
import { type Box, boundsOf, join } from '../scene/bounds.js';
import { at, line, text } from '../scene/draw.js';
import type { Item, Scene, SheetPoint } from '../scene/scene.js';
import type { Point3 } from '../scene/vector.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, sheetWidth, type } from '../sheet/sizes.js';
import { rightRoom, type Station, stationsBelow, stationsRight } from '../sheet/stations.js';
import type { Looking } from '../space/project.js';
import type { Thing } from '../space/thing.js';
import { thingKinds } from '../space/thing-kinds.js';
import { middleOf, nearestPiece } from '../space/thing-places.js';
import { describe } from '../words/describe.js';
import { centers } from './center-of-gravity.js';
import { drawThing } from './draw-thing.js';
import { layoutLegend } from './layout-legend.js';
import { levels } from './levels.js';
import { loadArrows } from './load-arrows.js';
import { fit } from './place-on-sheet.js';
import { labelFor, mayShare } from './support-label.js';
import { frontMark, gradeMark } from './way-marks.js';

export interface Elevation {
  readonly title: Message;
  readonly looking: Looking;
  /** Most room that the drawing may take down the sheet, mm. */
  readonly high: number;
  /** Whether something stands behind the main body, so that it is drawn in broken lines. */
  readonly far: (center: Point3) => boolean;
  readonly stations: (look: Look, toSheet: (p: Point3) => SheetPoint) => readonly Station[];
  readonly front: 'left' | undefined;
}

/** A view from one side: ground line, bodies, supports, heights at the right, distances below. */
export function drawElevation(look: Look, e: Elevation): Scene {
  const title = headingOf(look, e.title);
  const head = heading(title);
  const heights = levels(look);
  const left = margin + 2;
  const right = sheetWidth - margin - rightRoom(heights.map((h) => ({ ...h, at: 0, from: 0 }))) - 4;
  const placing = fit(
    look.things,
    e.looking,
    { left, right, top: head.bottom + 16, high: e.high },
    look.say.words.units,
  );
  const { box, toSheet } = placing;
  const ground = toSheet({ x: 0, y: 0, z: 0 }).y;

  const ordered = look.things
    .filter((t) => t.solids.length > 0)
    .map((thing) => ({
      thing,
      far: thing.kind !== 'vehicle' && e.far(middleOf(thing)),
      near: nearestPiece(thing, e.looking),
    }))
    .sort((a, b) => rank(a) - rank(b) || a.near - b.near);
  const drawn = ordered.flatMap(({ thing, far }) => {
    const one = drawThing(thing, look, placing, { far });
    return one === undefined ? [] : [{ thing, far, ...one }];
  });
  const bottom = Math.max(box.bottom, ground);
  const stations = stationsBelow(
    e.stations(look, toSheet).map((s) => ({ ...s, from: ground + 1.5 })),
    { at: bottom + 17, low: margin, high: sheetWidth - margin },
  );
  const sides = stationsRight(
    heights.map((h) => ({
      key: h.key,
      words: h.words,
      ref: h.ref,
      at: toSheet({ x: 0, y: 0, z: h.height }).y,
      from: box.right + 1,
    })),
    { at: box.right + 4, low: head.bottom + 2, high: bottom + 6 },
  );
  const center = centers(look, placing);
  const loads = loadArrows(look, placing);
  const fixed: readonly Item[] = [
    groundLine(box, ground),
    ...drawn.map((d) => d.item),
    ...center,
    ...loads,
    ...(e.front === undefined
      ? [
          text(
            'driver side',
            at(box.left, head.bottom + 3),
            look.say.message(term('piece.driver-side')),
            type.small,
            {
              tone: 'dimension',
            },
          ),
          text(
            'passenger side',
            at(box.right, head.bottom + 3),
            look.say.message(term('piece.passenger-side')),
            type.small,
            {
              tone: 'dimension',
              anchor: 'end',
            },
          ),
        ]
      : [
          frontMark(look, head.bottom + 3, box.left),
          ...gradeMark(look, sheetWidth - margin, head.bottom + 3),
        ]),
    ...sides,
    ...stations.items,
  ];
  const placed = placeLabels(labelsOf(drawn, look), {
    area: { left: margin, top: head.bottom + 7, right: box.right + 3, bottom: bottom + 16 },
    taken: [
      ...textBoxes(fixed),
      ...center.map(boundsOf),
      { left: box.left - 8, right: box.right + 8, top: ground - 0.3, bottom: ground + 0.6 },
    ],
    shapes: [
      ...drawn.flatMap((d) => (d.thing.kind === 'vehicle' ? [] : shapeBoxes(d.item, d.thing.kind))),
      ...loads.map(boundsOf),
    ],
    lines: thinLines(fixed),
    bodies: drawn.filter((d) => d.thing.kind === 'vehicle').map((d) => d.box),
    bodyCost: 2,
  });
  const rest = withoutRoom(placed.unplaced, stations.bottom, look.say);
  return sheet({
    choice: look.choice,
    heading: title,
    spoken: describe(look, title.title),
    body: [...fixed, ...placed.items, ...rest.items],
    bottom: rest.bottom,
    legend: [
      ...layoutLegend(look, loads.length > 0),
      ...(drawn.some((d) => d.far)
        ? [
            {
              words: look.say.message(term('piece.far-side')),
              sign: { kind: 'line', tone: 'timber', dash: 'dashed' },
            } as const,
          ]
        : []),
    ],
    scale: placing.scale,
    words: look.say.words,
    ...(placing.frame === undefined ? {} : { frame: placing.frame }),
  });
}

/** Far supports first, then bodies, then near supports, and ties over all. */
const rank = ({ thing, far }: { thing: Thing; far: boolean }): number =>
  far ? 0 : thingKinds[thing.kind].side;

const groundLine = (box: Box, y: number): Item => ({
  kind: 'group',
  key: 'ground',
  ref: { element: 'ground' },
  name: undefined,
  items: [
    line('line', 'ground', at(box.left - 4, y), at(box.right + 4, y)),
    ...Array.from({ length: Math.floor((box.right - box.left + 8) / 5) }, (_, i) =>
      line(`stroke ${i}`, 'ground', at(box.left - 2 + i * 5, y), at(box.left - 4 + i * 5, y + 2), {
        width: 0.15,
      }),
    ),
  ],
});

/** Supports drawn at the same place share a label: the near one is named, the far one added. */
function labelsOf(drawn: readonly { thing: Thing; far: boolean; box: Box }[], look: Look) {
  const taken = new Set<string>();
  return drawn
    .filter((d) => thingKinds[d.thing.kind].named !== 'nowhere')
    .flatMap((d) => {
      if (taken.has(d.thing.id)) return [];
      const same = drawn.filter(
        (o) =>
          o === d ||
          (o.thing.kind === d.thing.kind &&
            d.thing.kind !== 'vehicle' &&
            !taken.has(o.thing.id) &&
            mayShare(o.thing, d.thing, look) &&
            close(o.box, d.box)),
      );
      for (const o of same) taken.add(o.thing.id);
      const lead = same.find((o) => !o.far) ?? d;
      const others = same.filter((o) => o !== lead).map((o) => o.thing);
      const label = labelFor(lead.thing, look, d.box, others);
      return [d.thing.kind === 'vehicle' ? { ...label, inside: d.box } : label];
    });
}

/** Whether two shapes lie over each other, and neither reaches out beyond the other. */
const close = (a: Box, b: Box): boolean => {
  const all = join(a, b);
  return (
    all.right - all.left < Math.min(a.right - a.left, b.right - b.left) + 1.5 &&
    all.bottom - all.top < Math.min(a.bottom - a.top, b.bottom - b.top) + 1.5
  );
};

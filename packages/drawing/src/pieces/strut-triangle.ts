import { message, name, term } from '@cribwright/messages';
import type { PlacedStrut, Strut } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { overlaps } from '../scene/bounds.js';
import { at, circle, group, line, path, polygon, text } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { textBoxes } from '../scene/walk.js';
import { dimensionLine } from '../sheet/dimension-line.js';
import { type } from '../sheet/sizes.js';
import { type Scale, standardScale } from '../sheet/standard-scale.js';
import { nameOf } from '../words/name-of.js';

const arrow = 24;

/** The strut in its own upright plane, to scale, with its angle, its three lengths and the force along it. */
export function strutTriangle(
  placed: PlacedStrut,
  look: Look,
  field: { readonly left: number; readonly right: number; readonly top: number },
): { readonly item: Item; readonly bottom: number; readonly scale: Scale } {
  const { say } = look;
  const { strut, foot, run } = placed;
  // A head at or below its base is no triangle: it is drawn flat, and its figures say so.
  const rise = Math.max(0.01, placed.rise.low);
  const scale = standardScale(
    { across: Math.max(run, 0.1), down: rise },
    { across: field.right - field.left - 80, down: 78 },
    look.say.words.units,
  );
  const k = scale.perMeter;
  const a = at(field.left + 34, field.top + 12 + rise * k);
  const b = at(a.x + run * k, a.y - rise * k);
  const angle = Math.max(0, placed.angle.low);
  const below = a.y + foot.z * k;
  const figures = look.support(strut.id)?.figures ?? {};
  const along = { x: Math.cos(angle), y: -Math.sin(angle) };
  const mark = angleMark(a, angle, say.figure(figures.angle));
  const lengths = lengthWords(
    a,
    b,
    angle,
    say.message(message('piece.length', { length: name(say.figure(figures.length)) })),
  );
  const taken = textBoxes(mark);
  const roomy = textBoxes(lengths).every((box) => !taken.some((t) => overlaps(t, box, 0.5)));
  const items: Item[] = [
    line('ground', 'ground', at(a.x - 18, below), at(b.x + 16, below)),
    ...Array.from({ length: Math.floor((b.x - a.x + 32) / 5) }, (_, i) =>
      line(`ground ${i}`, 'ground', at(a.x - 14 + i * 5, below), at(a.x - 16 + i * 5, below + 2), {
        width: 0.15,
      }),
    ),
    ...allowed(look, a, Math.min(run * k, 46)),
    ...underside(b),
    line('plumb', 'dimension', b, at(b.x, a.y), { dash: 'dashed', width: 0.15 }),
    line('shaft', 'strut', a, b, { width: 2.2 }),
    circle('foot', 'strut', a, 2, 'light'),
    circle('head', 'strut', b, 1.8, 'light'),
    ...mark,
    dimensionLine('run', at(a.x, below), at(b.x, below), say.long(run), 9),
    dimensionLine('rise', at(b.x, a.y), b, say.long(placed.rise.low), 12),
    // On a short strut there is no room for its length beside its angle; the table beside has it.
    ...(roomy ? lengths : []),
    ...force(
      b,
      along,
      figures.load?.value === undefined
        ? say.message(term('piece.load-not-known'))
        : say.figure(figures.load),
    ),
    ...ties(strut, look, a),
  ];
  return {
    item: group('triangle', items, {
      ref: strut.ref,
      name: nameOf({ id: strut.id, kind: 'strut', name: strut.name, ref: strut.ref, solids: [] }, look),
    }),
    bottom: below + 16,
    scale,
  };
}

/** The wedge of angles that the policy allows, from the base. */
function allowed(look: Look, foot: SheetPoint, reach: number): readonly Item[] {
  const [low, high] = [limit(look, 'least strut angle'), limit(look, 'most strut angle')];
  if (low === undefined || high === undefined) return [];
  const arc = Array.from({ length: 13 }, (_, i) => {
    const angle = low + ((high - low) * i) / 12;
    return at(foot.x + Math.cos(angle) * reach, foot.y - Math.sin(angle) * reach);
  });
  return [polygon('allowed', 'good', [foot, ...arc], 'light', { width: 0.2, dash: 'dashed' })];
}

function limit(look: Look, key: 'least strut angle' | 'most strut angle'): number | undefined {
  const { value } = look.plan.policy.limits[key];
  return typeof value === 'number' ? value : typeof value === 'string' ? undefined : value.low;
}

const underside = (b: SheetPoint): readonly Item[] => [
  line('underside', 'vehicle', at(b.x - 14, b.y - 1.8), at(b.x + 14, b.y - 1.8), { width: 0.7 }),
  ...Array.from({ length: 7 }, (_, i) =>
    line(`underside ${i}`, 'vehicle', at(b.x - 14 + i * 4, b.y - 1.8), at(b.x - 12 + i * 4, b.y - 4), {
      width: 0.15,
    }),
  ),
];

function angleMark(foot: SheetPoint, angle: number, words: string): readonly Item[] {
  const radius = 17;
  const arc = Array.from({ length: 9 }, (_, i) => {
    const a = (angle * i) / 8;
    return at(foot.x + Math.cos(a) * radius, foot.y - Math.sin(a) * radius);
  });
  const half = angle / 2;
  return [
    path('angle', 'label', arc, { width: 0.3 }),
    text(
      'angle words',
      at(foot.x + Math.cos(half) * (radius + 2), foot.y - Math.sin(half) * (radius + 2) + 1),
      words,
      type.label,
      {
        weight: 'bold',
        halo: true,
      },
    ),
  ];
}

function lengthWords(a: SheetPoint, b: SheetPoint, angle: number, words: string): readonly Item[] {
  const middle = at((a.x + b.x) / 2 - Math.sin(angle) * 3.2, (a.y + b.y) / 2 - Math.cos(angle) * 3.2);
  return [
    text('length', middle, words, type.dimension, {
      anchor: 'middle',
      turn: (-angle * 180) / Math.PI,
      tone: 'dimension',
      halo: true,
    }),
  ];
}

/** The force at the head, pressing down along the shaft. */
function force(b: SheetPoint, along: SheetPoint, words: string): readonly Item[] {
  const from = at(b.x + along.x * arrow, b.y + along.y * arrow);
  const tip = at(b.x + along.x * 6, b.y + along.y * 6);
  return [
    line('force', 'load', from, tip, { head: 'arrow', width: 0.7 }),
    text('force words', at(from.x + 2, from.y + 2), words, type.label, {
      weight: 'bold',
      tone: 'load',
      halo: true,
    }),
  ];
}

/** The ties that are anchored at this strut's base. */
function ties(strut: Strut, look: Look, foot: SheetPoint): readonly Item[] {
  const own = look.plan.ties.filter((t) =>
    [t.from, t.to].some((anchor) => anchor.kind === 'strut base' && anchor.strut === strut.id),
  );
  if (own.length === 0)
    return [
      text('no tie', at(foot.x - 20, foot.y - 6), look.say.message(term('piece.no-tie')), type.dimension, {
        tone: 'warning',
        halo: true,
      }),
    ];
  return own.map((tie, i) => {
    const y = foot.y - 3 - i * 5;
    const figures = look.support(tie.id)?.figures ?? {};
    const own = name(tie.name);
    const words = look.say.message(
      figures.load === undefined
        ? own
        : figures.load.value === undefined
          ? message('piece.pull-not-known', { name: own })
          : message('piece.pulls', { name: own, pull: name(look.say.figure(figures.load)) }),
    );
    return group(
      tie.id,
      [
        line('line', 'tie', at(foot.x + 3, y), at(foot.x + 26, y), { dash: 'short dash', head: 'arrow' }),
        text('words', at(foot.x - 2, y - 2.4), words, type.dimension, {
          anchor: 'end',
          tone: 'tie',
          halo: true,
        }),
      ],
      { ref: tie.ref, name: look.say.message(message('piece.tie-name', { words: name(words) })) },
    );
  });
}

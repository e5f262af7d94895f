import { gravest, type Look, type Standing } from '../look/look.js';
import { around, type Box, boundsOf, join } from '../scene/bounds.js';
import { circle, group, line, polygon } from '../scene/draw.js';
import type { Drag, Item, SheetPoint } from '../scene/scene.js';
import type { Solid } from '../scene/solid.js';
import type { Tone } from '../scene/tone.js';
import { remembered } from '../sharing/remembered.js';
import { outline, pointsOf } from '../space/project.js';
import type { Thing } from '../space/thing.js';
import { nearnessOf } from '../space/thing-places.js';
import type { Say } from '../text/say.js';
import { nameOf } from '../words/name-of.js';
import type { Placing } from './place-on-sheet.js';
import { overused } from './support-label.js';

export interface DrawOptions {
  /** It stands on the far side: in broken lines. */
  readonly far?: boolean;
  /** As if one could see through it: pieces over the body, whatever lies nearer. */
  readonly through?: boolean;
  /** Which pieces can be seen at all, where that is known beforehand. */
  readonly only?: ((solid: Solid) => boolean) | undefined;
  /** In lines alone, so that what it stands over stays to be seen. */
  readonly clear?: boolean;
}

export interface DrawnThing {
  readonly item: Item;
  readonly box: Box;
}

/** One element, drawn as it stands at the moment: in full, faint where it comes later, crossed out where lost. */
export function drawThing(
  thing: Thing,
  look: Look,
  placing: Placing,
  options: DrawOptions = {},
): DrawnThing | undefined {
  const standing = look.standing(thing.id);
  const { far, through, only, clear } = options;
  const from = [standing, placing.looking, placing.key, far, through, only, clear];
  const { items, box } = shapesOf(thing, from, () => draw(thing, standing, placing, options));
  if (items.length === 0) return undefined;
  const name = nameOf(thing, look);
  const worst = overused(thing, look) ? 'danger' : gravest(look.findingsOn(thing.id));
  const item = itemOf(thing, [items, name, worst, far, look.say.words], () =>
    group(thing.id, items, {
      ref: thing.ref,
      name,
      worst,
      drag: far === true ? undefined : dragOf(thing, look.say),
    }),
  );
  return { item, box };
}

function dragOf({ drag }: Thing, say: Say): Drag | undefined {
  if (drag === undefined) return undefined;
  const { fixed, ...rest } = drag;
  return fixed === undefined ? rest : { ...rest, fixed: say.message(fixed) };
}

// An element that did not change is the same object in the next drawing; told otherwise, its shapes still are.
const shapesOf = remembered<Thing, { readonly items: readonly Item[]; readonly box: Box }>();
const itemOf = remembered<Thing, Item>();

function draw(
  thing: Thing,
  standing: Standing,
  placing: Placing,
  options: DrawOptions,
): { readonly items: readonly Item[]; readonly box: Box } {
  const solids = options.only === undefined ? thing.solids : thing.solids.filter(options.only);
  const seen = new Set<string>();
  const shapes = [...solids]
    .map((solid, index) => ({
      solid,
      index,
      near: options.through === true ? layer(solid) : nearnessOf(solid, placing.looking),
    }))
    .sort((a, b) => b.near - a.near || b.index - a.index)
    .flatMap(({ solid }) => {
      const shape = drawSolid(solid, placing, standing, options);
      const print = fingerprint(shape);
      if (seen.has(print)) return [];
      seen.add(print);
      return [shape];
    })
    .reverse();
  const box = shapes.map(boundsOf).reduce(join, around([]));
  const marks = standing === 'lost' ? crossedOut(box) : standing === 'adding' ? marked(box) : [];
  return { items: shapes.length === 0 ? [] : [...shapes, ...marks], box };
}

const layer = (solid: Solid): number => (solid.tone === 'vehicle' ? 0 : solid.kind === 'cylinder' ? 1 : 2);

const fingerprint = (item: Item): string =>
  item.kind === 'polygon'
    ? item.points.reduce((all, p) => `${all}${Math.round(p.x * 100)},${Math.round(p.y * 100)} `, '')
    : JSON.stringify({ ...item, key: '' });

function drawSolid(solid: Solid, placing: Placing, standing: Standing, { far, clear }: DrawOptions): Item {
  const faint = standing === 'later' || standing === 'lost';
  const tone: Tone = faint ? 'ghost' : solid.tone;
  const broken = faint || far === true ? ({ dash: 'dashed' } as const) : {};
  const fill =
    faint || far === true || clear === true
      ? 'none'
      : solid.tone === 'chock' && solid.kind === 'block'
        ? 'solid'
        : 'light';
  if (solid.kind === 'rod') {
    const width = Math.max(solid.tone === 'tie' ? 0.55 : 0.9, solid.thickness * placing.scale.perMeter);
    const dash = solid.tone === 'tie' && !faint ? ({ dash: 'short dash' } as const) : broken;
    return line(solid.key, tone, placing.toSheet(solid.from), placing.toSheet(solid.to), {
      width: faint || solid.tone === 'tie' ? Math.min(width, 0.7) : Math.min(width, 2.6),
      ...dash,
    });
  }
  const points = pointsOf(solid).map(placing.toSheet);
  if (solid.kind === 'cylinder') {
    const [from, to] = [placing.toSheet(solid.from), placing.toSheet(solid.to)];
    if (Math.hypot(to.x - from.x, to.y - from.y) < 1e-6)
      return circle(
        solid.key,
        tone,
        from,
        solid.radius * placing.scale.perMeter,
        far === true ? 'none' : 'light',
      );
  }
  return polygon(solid.key, tone, outline(points), fill, broken);
}

const crossedOut = (box: Box): readonly Item[] => [
  line('crossed 1', 'danger', corner(box, 'left', 'top'), corner(box, 'right', 'bottom'), { width: 0.8 }),
  line('crossed 2', 'danger', corner(box, 'right', 'top'), corner(box, 'left', 'bottom'), { width: 0.8 }),
];

const corner = (box: Box, x: 'left' | 'right', y: 'top' | 'bottom'): SheetPoint => ({
  x: box[x] + (x === 'left' ? -1 : 1),
  y: box[y] + (y === 'top' ? -1 : 1),
});

/** A frame round what is being put in at this stage. */
const marked = (box: Box): readonly Item[] => [
  polygon(
    'adding',
    'note',
    [
      corner(box, 'left', 'top'),
      corner(box, 'right', 'top'),
      corner(box, 'right', 'bottom'),
      corner(box, 'left', 'bottom'),
    ],
    'none',
    { dash: 'dashed', width: 0.5 },
  ),
];

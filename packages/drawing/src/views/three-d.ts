import { term } from '@cribwright/messages';
import { placeLabels } from '../labels/place-labels.js';
import { shapeBoxes, textBoxes } from '../labels/surroundings.js';
import { withoutRoom } from '../labels/without-room.js';
import { headingOf } from '../look/heading-of.js';
import { gravest, type Look, type Standing } from '../look/look.js';
import { seenFaces } from '../pieces/corner-view.js';
import { hiddenOutlines } from '../pieces/hidden-outlines.js';
import { layoutLegend } from '../pieces/layout-legend.js';
import { fit, type Placing } from '../pieces/place-on-sheet.js';
import { labelFor } from '../pieces/support-label.js';
import { around, type Box, boundsOf, join } from '../scene/bounds.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import type { Solid } from '../scene/solid.js';
import { remembered } from '../sharing/remembered.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, sheetWidth, type } from '../sheet/sizes.js';
import { fromCorner, pointsOf } from '../space/project.js';
import type { Thing } from '../space/thing.js';
import { thingKinds } from '../space/thing-kinds.js';
import { middleOf, nearnessOf } from '../space/thing-places.js';
import { shortName } from '../text/short-name.js';
import { describe } from '../words/describe.js';
import { nameOf } from '../words/name-of.js';
import type { View } from './view.js';

/** Everything in space, from behind, above and the driver side. The panel can also rotate it. */
export const view: View = {
  id: '3d',
  order: 110,
  name: term('view.three-d'),
  shows: term('view.three-d-shows'),
  offered: () => true,
  draw: (look) => {
    const title = headingOf(look, term('view.three-d-title'));
    const head = heading(title);
    const placing = fit(
      look.things,
      fromCorner,
      { left: margin + 6, right: sheetWidth - margin - 6, top: head.bottom + 12, high: 150 },
      look.say.words.units,
    );
    const drawn = look.things
      .filter((t) => t.solids.length > 0)
      .map((thing) => ({ thing, rank: rank(thing, look), near: fromCorner.near(middleOf(thing)) }))
      .sort((a, b) => a.rank - b.rank || a.near - b.near)
      .map(({ thing }) => ({ thing, item: inSpace(thing, look, placing) }));
    const solid = look.things.filter((t) => t.solids.length > 0 && thingKinds[t.kind].named !== 'nowhere');
    const hidden = hiddenOutlines(
      solid.filter((t) => t.kind !== 'vehicle' && rank(t, look) === 0),
      solid.filter((t) => t.kind === 'vehicle'),
      placing,
    );
    const front = cornerFront(margin + 3, head.bottom + 5, look.say.message(term('view.front')));
    const boxes = drawn.map((d) => ({ thing: d.thing, box: boundsOf(d.item) }));
    const placed = placeLabels(
      boxes
        .filter((b) => thingKinds[b.thing.kind].named !== 'nowhere')
        .map((b) => ({
          ...labelFor(b.thing, look, b.box),
          ...(b.thing.kind === 'vehicle' ? { inside: inner(b.box) } : {}),
        })),
      {
        area: { left: margin, right: sheetWidth - margin, top: head.bottom, bottom: placing.box.bottom + 12 },
        taken: textBoxes(front),
        shapes: drawn.flatMap((d) => (d.thing.kind === 'vehicle' ? [] : shapeBoxes(d.item, d.thing.kind))),
        lines: [],
        bodies: boxes.filter((b) => b.thing.kind === 'vehicle').map((b) => b.box),
        bodyCost: 3,
      },
    );
    const rest = withoutRoom(placed.unplaced, placing.box.bottom + 12, look.say);
    return sheet({
      choice: look.choice,
      heading: title,
      spoken: describe(look, title.title),
      body: [...front, ...drawn.map((d) => d.item), ...hidden, ...placed.items, ...rest.items],
      bottom: rest.bottom,
      legend: [
        ...layoutLegend(look, false),
        ...(hidden.length > 0
          ? [
              {
                words: look.say.message(term('view.hidden-behind')),
                sign: { kind: 'line', tone: 'ghost', dash: 'dashed' },
              } as const,
            ]
          : []),
      ],
      scale: placing.scale,
      words: look.say.words,
      space: {
        things: look.things.map((t) => ({
          ref: t.ref,
          name: nameOf(t, look),
          ...labeled(t, look),
          standing: look.standing(t.id),
          solids: t.solids,
        })),
      },
    });
  },
};

const labeled = (thing: Thing, look: Look) => {
  const { badge } = labelFor(thing, look, around([{ x: 0, y: 0 }]));
  return {
    ...(thingKinds[thing.kind].named === 'everywhere' ? { label: shortName(thing.name) } : {}),
    ...(badge === undefined ? {} : { worst: badge }),
  };
};

/** Which way the front is, seen from the corner. */
const cornerFront = (x: number, y: number, words: string): readonly Item[] => {
  const long = 9;
  return [
    line('front arrow', 'label', at(x + long * Math.cos(Math.PI / 6), y + long / 2), at(x, y), {
      head: 'arrow',
    }),
    text('front', at(x + 10, y + 4), words, type.small, { weight: 'bold' }),
  ];
};

/** What stands on the far side of the main body is drawn before it, the rest after it. */
function rank(thing: Thing, look: Look): number {
  const main = look.plan.vehicles[0];
  if (main === undefined || thing.id === main.id) return 1;
  const center = middleOf(thing);
  return center.y > main.at.y + 0.05 ? 0 : 2;
}

/** What lies wholly under a body's floor is drawn before the body. */
function under(solid: Solid, floors: readonly number[]): 0 | 1 {
  if (floors.length === 0) return 1;
  return Math.max(...pointsOf(solid).map((p) => p.z)) <= Math.min(...floors) + 0.15 ? 0 : 1;
}

function inSpace(thing: Thing, look: Look, placing: Placing): Item {
  const standing = look.standing(thing.id);
  const name = nameOf(thing, look);
  const worst = gravest(look.findingsOn(thing.id));
  const items = piecesOf(thing, [standing, placing.key], () => pieces(thing, standing, placing.toSheet));
  return itemOf(thing, [items, name, worst], () => group(thing.id, items, { ref: thing.ref, name, worst }));
}

// An element that did not change is the same object in the next drawing; told otherwise, its pieces still are.
const piecesOf = remembered<Thing, readonly Item[]>();
const itemOf = remembered<Thing, Item>();

function pieces(thing: Thing, standing: Standing, toSheet: Placing['toSheet']): readonly Item[] {
  const faint = standing === 'later' || standing === 'lost';
  const floors = thing.solids
    .filter((s) => s.tone === 'vehicle')
    .map((s) => Math.min(...pointsOf(s).map((p) => p.z)));
  const shapes = thing.solids
    .map((solid) => ({ solid, under: under(solid, floors), depth: nearnessOf(solid, fromCorner) }))
    .sort((a, b) => a.under - b.under || a.depth - b.depth)
    .flatMap(({ solid: s }) =>
      seenFaces(
        s,
        toSheet,
        faint ? { tone: 'ghost', clear: true } : thing.kind === 'vehicle' ? { pale: true } : {},
      ),
    );
  const box = shapes.map(boundsOf).reduce(join, around([]));
  const cross =
    standing === 'lost'
      ? [
          line('crossed 1', 'danger', at(box.left, box.top), at(box.right, box.bottom), { width: 0.8 }),
          line('crossed 2', 'danger', at(box.right, box.top), at(box.left, box.bottom), { width: 0.8 }),
        ]
      : [];
  return [...shapes, ...cross];
}

/** Where a body is sure to be: the middle of the room it takes on the sheet. */
const inner = (box: Box): Box => {
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const [w, h] = [(box.right - box.left) / 6, (box.bottom - box.top) / 6];
  return { left: x - w, right: x + w, top: y - h, bottom: y + h };
};

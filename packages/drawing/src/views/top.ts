import { term } from '@cribwright/messages';
import { placeLabels } from '../labels/place-labels.js';
import { shapeBoxes, textBoxes, thinLines } from '../labels/surroundings.js';
import { withoutRoom } from '../labels/without-room.js';
import { headingOf } from '../look/heading-of.js';
import { centers } from '../pieces/center-of-gravity.js';
import { drawThing } from '../pieces/draw-thing.js';
import { egressItems, shownWays } from '../pieces/egress.js';
import { layoutLegend } from '../pieces/layout-legend.js';
import { loadMarks } from '../pieces/load-marks.js';
import { acrossStations, alongStations } from '../pieces/measured-places.js';
import { movedLoads } from '../pieces/moved-loads.js';
import { fit } from '../pieces/place-on-sheet.js';
import { labelFor } from '../pieces/support-label.js';
import { planMarks } from '../pieces/way-marks.js';
import { boundsOf } from '../scene/bounds.js';
import { at, line } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import type { Solid } from '../scene/solid.js';
import { at3 } from '../scene/vector.js';
import { remembered } from '../sharing/remembered.js';
import { dimensionLine } from '../sheet/dimension-line.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, sheetWidth } from '../sheet/sizes.js';
import { rightRoom, stationsBelow, stationsRight } from '../sheet/stations.js';
import { fromAbove } from '../space/project.js';
import type { Thing } from '../space/thing.js';
import { thingKinds } from '../space/thing-kinds.js';
import { describe } from '../words/describe.js';
import type { View } from './view.js';

/** Seen from above; bodies are drawn as if one could see through them. */
export const view: View = {
  id: 'top',
  order: 10,
  name: term('view.top'),
  shows: term('view.top-shows'),
  offered: () => true,
  draw: (look) => {
    const title = headingOf(look, term('view.top-title'));
    const head = heading(title);
    const across = acrossStations(look);
    const left = margin + 10;
    const right =
      sheetWidth - margin - Math.max(rightRoom(across.map((s) => ({ ...s, at: 0, from: 0 }))), 10);
    const ways = shownWays(look);
    const placing = fit(
      look.things,
      fromAbove,
      { left, right, top: head.bottom + 33, high: 120 },
      look.say.words.units,
      ways.flatMap((w) => w.points),
    );
    const { box, toSheet } = placing;

    const vehicles = look.things.filter((t) => t.kind === 'vehicle');
    const things = look.things
      .filter((t) => t.kind !== 'egress')
      .toSorted((a, b) => thingKinds[a.kind].above - thingKinds[b.kind].above);
    const drawn = things.flatMap((thing) => {
      const one = drawThing(thing, look, placing, {
        through: thing.kind === 'vehicle',
        only: thing.kind === 'crib' ? fromAboveOnly(thing) : undefined,
        clear: thing.kind === 'vehicle' && thing !== vehicles[0],
      });
      return one === undefined ? [] : [{ thing, ...one }];
    });

    const marks = planMarks(look, placing);
    const stations = stationsBelow(alongStations(look, toSheet), {
      at: box.bottom + 17,
      low: margin,
      high: sheetWidth - margin - 30,
    });
    const sides = stationsRight(
      across.map((s) => ({ ...s, at: toSheet(at3(0, s.across, 0)).y, from: box.right + 1 })),
      { at: box.right + 5, low: box.top - 12, high: box.bottom + 12 },
    );
    const main = look.plan.vehicles[0];
    const length =
      main === undefined
        ? []
        : [
            dimensionLine(
              'length',
              toSheet(at3(main.at.x, main.at.y + main.width / 2, 0)),
              toSheet(at3(main.at.x + main.length, main.at.y + main.width / 2, 0)),
              look.say.long(main.length),
              -(toSheet(at3(0, main.at.y + main.width / 2, 0)).y - box.top) - 21,
            ),
          ];
    const center = centers(look, placing);
    const loads = loadMarks(look, placing);
    // From the support out to its distance: under the bodies, so that it is seen where nothing is in the way.
    const reaches = across.map((s) => {
      const from = toSheet(at3(s.rearmost, s.across, 0));
      return line(`reach ${s.key}`, 'faint', from, at(box.right + 1, from.y));
    });
    const fixed: readonly Item[] = [
      ...reaches,
      ...egressItems(look, placing, ways),
      ...drawn.map((d) => d.item),
      ...center,
      ...loads,
      ...length,
      ...marks,
      ...sides,
      ...stations.items,
    ];
    const named = drawn.filter(({ thing }) => thingKinds[thing.kind].named !== 'nowhere');
    const placed = placeLabels(
      named.map(({ thing, box: own }) => ({
        ...labelFor(thing, look, own),
        ...(thing.kind === 'vehicle' ? { inside: own } : {}),
      })),
      {
        area: { left: margin, top: box.top - 20, right: box.right + 3, bottom: box.bottom + 16 },
        taken: [...textBoxes(fixed), ...center.map(boundsOf)],
        shapes: [
          ...drawn.flatMap((d) => (d.thing.kind === 'vehicle' ? [] : shapeBoxes(d.item, d.thing.kind))),
          ...loads.map(boundsOf),
        ],
        lines: thinLines(fixed),
        bodies: drawn.filter((d) => d.thing.kind === 'vehicle').map((d) => d.box),
        bodyCost: 26,
      },
    );
    const rest = withoutRoom(placed.unplaced, stations.bottom, look.say);
    const moved = movedLoads(look, rest.bottom + 3);
    return sheet({
      choice: look.choice,
      heading: title,
      spoken: describe(look, title.title),
      body: [...fixed, ...placed.items, ...rest.items, ...moved.items],
      bottom: moved.bottom,
      legend: layoutLegend(look, loads.length > 0),
      scale: placing.scale,
      words: look.say.words,
      ...(placing.frame === undefined ? {} : { frame: placing.frame }),
    });
  },
};

/** Of a crib seen from above: its top two courses, its base course, and wedges. The rest lies under them. */
const fromAboveOnly = (thing: Thing): ((solid: Solid) => boolean) =>
  topAndBase(thing, [], () => {
    const courses = new Map(thing.solids.map((s) => [s, courseOf(s)]));
    const top = Math.max(...[...courses.values()].map((number) => number ?? 0));
    return (solid) => {
      const own = courses.get(solid);
      return own === undefined || own === 1 || own >= top - 1;
    };
  });

const topAndBase = remembered<Thing, (solid: Solid) => boolean>();

const courseOf = (solid: Solid): number | undefined => {
  const number = /^course (\d+) /.exec(solid.key)?.[1];
  return number === undefined ? undefined : Number(number);
};

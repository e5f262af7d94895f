import { count, list, message, name } from '@cribwright/messages';
import type { Crib, ElementId, PlanPoint } from '@cribwright/model';
import { placeCrib } from '@cribwright/model/internal';
import { inch } from '@cribwright/units';
import { buildsThatStand } from '../alternatives/builds.js';
import type { CribWorking } from '../crib/crib-working.js';
import type { Workings } from '../derived/workings.js';
import { elementMessage } from '../element/element-message.js';
import type { Fix } from '../finding/finding.js';
import { setProperty } from '../finding/set-property.js';
import { clash } from '../space/clash.js';
import { placeText, sizeText } from '../vehicle/place-words.js';
import { captureOptions } from './capture-options.js';

/** Puts a crib under what lies over it and may bear; of each vehicle one way, as many as asked for. */
export function captureFixes(crib: Crib, w: Workings, most = 2): readonly Fix[] {
  const now = crib.captures.map((c) => `${c.vehicle}/${c.part}`).join();
  return captureOptions(crib, w)
    .filter(({ vehicle, parts }) => parts.map((p) => `${vehicle.id}/${p.id}`).join() !== now)
    .slice(0, most)
    .map(({ vehicle, parts, text }) => ({
      title: message('remedy.capture', {
        support: elementMessage(w.plan, crib.id),
        parts: list(
          parts.map((p) => name(p.name)),
          'and',
        ),
        vehicle: name(vehicle.name),
      }),
      edits: [setProperty(crib.id, 'captures', text)],
      safe: false,
    }));
}

/** The build of the fewest timbers, from what is there, that reaches and may be as high as it then is. */
export function standingBuildFix(c: CribWorking, w: Workings): readonly Fix[] {
  const { crib } = c;
  const built = buildsThatStand(c, w)[0];
  if (built === undefined) return [];
  const { timber, layout } = built;
  const sameTimber = timber.name === crib.timber.name && timber.length === crib.timber.length;
  const sameLayout =
    layout.lengthwise === crib.layout.lengthwise && layout.crosswise === crib.layout.crosswise;
  const laid = `${layout.lengthwise} by ${layout.crosswise}`;
  const long = sizeText(timber.length, w.plan.display, 'nearest');
  return [
    {
      title:
        sameTimber && sameLayout
          ? message('packing.fix-courses', { courses: name(`${built.courses}`) })
          : message('remedy.build', {
              crib: name(crib.name),
              layout: name(laid),
              timber: message('figure.timber-of-length', { timber: name(timber.name), length: name(long) }),
              courses: count(built.courses),
            }),
      edits: [
        ...(sameTimber ? [] : [setProperty(crib.id, 'timber', `${timber.name} ${long} long`)]),
        ...(sameLayout ? [] : [setProperty(crib.id, 'layout', laid)]),
        ...(built.courses === crib.courses ? [] : [setProperty(crib.id, 'courses', `${built.courses}`)]),
      ],
      safe: false,
    },
  ];
}

/** Steps in which a place is looked for, and how far, m: more is another plan. */
const step = 0.5 * inch;
const farthest = 96;

/**
 * Moves a crib along or across its vehicle to the nearest place where it meets as much as now and is in nobody's way.
 */
export function moveClearFix(crib: Crib, w: Workings): readonly Fix[] {
  const to = nearestClear(crib, w);
  if (to === undefined) return [];
  const text = placeText(to, w.plan.display);
  return [
    {
      title: message('remedy.move', { support: elementMessage(w.plan, crib.id), place: name(text) }),
      edits: [{ kind: 'place', at: { element: crib.id, property: 'at' }, from: crib.at, to, text }],
      safe: false,
    },
  ];
}

function nearestClear(crib: Crib, w: Workings): PlanPoint | undefined {
  const now = placeCrib(crib, w.placed.around);
  for (let n = 1; n <= farthest; n++)
    for (const [x, y] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      const at = { x: crib.at.x + x * n * step, y: crib.at.y + y * n * step };
      const moved = placeCrib({ ...crib, at }, w.placed.around);
      if (moved.loaded >= Math.max(1, now.loaded) && moved.captures?.hit === true && !inTheWay(moved, w))
        return at;
    }
  return undefined;
}

function inTheWay({ crib, extent }: ReturnType<typeof placeCrib>, w: Workings): boolean {
  const own = new Set<ElementId>([
    ...crib.captures.map((k) => k.vehicle),
    ...(crib.standsOn.kind === 'vehicle' ? [crib.standsOn.vehicle] : []),
  ]);
  const others = [
    ...w.placed.cribs.all.filter((c) => c.crib.id !== crib.id).map((c) => c.extent),
    ...w.placed.stepChocks.all.map((c) => c.extent),
    ...w.placed.vehicles.all
      .filter((v) => v.given.position.kind === 'upright')
      .flatMap((v) => [
        ...(own.has(v.given.id) ? [] : [v.extent]),
        ...(crib.standsOn.kind === 'vehicle' ? [] : v.wheels.map((wheel) => wheel.extent)),
      ]),
  ];
  return others.some((other) => clash(extent, other) > 0);
}

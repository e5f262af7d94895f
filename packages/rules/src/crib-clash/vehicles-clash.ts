import type { Workings } from '@cribwright/engine';
import { clash } from '@cribwright/engine/internal';
import { message, name, shown, term } from '@cribwright/messages';
import type { PlacedVehicle } from '@cribwright/model';
import { exactly, measured } from '@cribwright/model';
import { length, lies } from '@cribwright/model/internal';
import type { RuleFinding } from '../definition/rule.js';

type How = 'wheels' | 'bodies' | 'maybe';

/**
 * Two vehicles in the same place. Where the plan says that one bears on the other or is coupled to it, their bodies
 * may meet; their wheels never do. Where only the boxes around two bodies overlap and not what is known to be solid,
 * that is a warning: the height of a hood or a trunk is not in the plan.
 */
export function vehiclesClash(w: Workings): readonly RuleFinding[] {
  const { all } = w.placed.vehicles;
  return all.flatMap((second, j) =>
    all.slice(0, j).flatMap((first) => {
      const found = worst(first, second, w);
      return found === undefined ? [] : [report(first, second, found, w)];
    }),
  );
}

interface Found {
  readonly how: How;
  readonly depth: number;
}

function worst(a: PlacedVehicle, b: PlacedVehicle, w: Workings): Found | undefined {
  const contacts = w.plan.contacts.filter(
    ({ lower, upper }) =>
      (lower === a.given.id && upper === b.given.id) || (lower === b.given.id && upper === a.given.id),
  );
  const [wheelsA, wheelsB] = [standing(a), standing(b)];
  const wheels = Math.max(0, ...wheelsA.flatMap((p) => wheelsB.map((q) => clash(p, q))));
  if (wheels > 0) return { how: 'wheels', depth: wheels };
  // A trailer is lower than the tires of its tractor beside them, where its floor is not.
  if (contacts.some((c) => c.coupled)) return undefined;
  const inBody = Math.max(
    0,
    ...wheelsA.flatMap((p) => b.solids.map((q) => clash(p, q))),
    ...wheelsB.flatMap((p) => a.solids.map((q) => clash(p, q))),
  );
  if (inBody > 0) return { how: 'bodies', depth: inBody };
  if (contacts.length > 0) return undefined;
  const bodies = Math.max(0, ...a.solids.flatMap((p) => b.solids.map((q) => clash(p, q))));
  if (bodies > 0) return { how: 'bodies', depth: bodies };
  const boxes = clash(a.extent, b.extent);
  return boxes > 0 ? { how: 'maybe', depth: boxes } : undefined;
}

/** Wheels as they stand. Where a vehicle lies its wheels are in the air, and where is not known. */
const standing = ({ given, wheels }: PlacedVehicle) => (lies(given) ? [] : wheels.map((o) => o.extent));

function report(
  first: PlacedVehicle,
  second: PlacedVehicle,
  { how, depth }: Found,
  w: Workings,
): RuleFinding {
  const figure = measured(
    length('depth', term('figure.overlap'), 'up'),
    exactly(depth),
    term('figure.seen-from-above'),
  );
  const holes = {
    first: name(first.given.name),
    second: name(second.given.name),
    depth: shown(figure),
  };
  const subject = { element: second.given.id };
  return {
    subject,
    at: second.given.id === w.plan.vehicles[0]?.id ? subject : { ...subject, property: 'at' },
    ...(how === 'maybe' ? { severity: 'warning' as const } : {}),
    message:
      how === 'wheels'
        ? message('crib-clash.vehicle-wheels', holes)
        : how === 'bodies'
          ? message('crib-clash.vehicles', holes)
          : message('crib-clash.vehicles-maybe', holes),
    figures: [figure],
    related: [{ at: { element: first.given.id }, message: term('crib-clash.vehicle-here') }],
  };
}

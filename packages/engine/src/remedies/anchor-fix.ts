import { message, name, quantity } from '@cribwright/messages';
import type { ElementId, Part, PlanPoint, Vehicle } from '@cribwright/model';
import { pieces, toPlan } from '@cribwright/model';
import { foot, inch, show } from '@cribwright/units';
import type { Workings } from '../derived/workings.js';
import type { Fix } from '../finding/finding.js';
import { towardWords } from '../push/toward-words.js';
import { placeText } from '../vehicle/place-words.js';
import { freeName } from './free-name.js';
import { workInSteps } from './step-edits.js';

/** From the vehicle to the anchor, m: a strap runs flat, and the anchor stands clear. Common practice, no source. */
const away = 15 * foot;

/**
 * A strap from a vehicle to an anchor that is still to be found: against a push in a direction, and strong enough for
 * the strap. Only where the plan has a strap of a known rating, which the anchor must then hold.
 *
 * @param push the way in which too little is held, rad: 0 to the rear, π/2 to the passenger side
 */
export function anchorFix(vehicleId: ElementId, push: number, w: Workings): readonly Fix[] {
  const { plan } = w;
  const vehicle = w.vehicles.get(vehicleId);
  const strap = plan.ties.find((t) => t.gear.kind === 'strap' && t.gear.rating !== undefined);
  const rating = strap?.gear.rating;
  if (vehicle === undefined || strap === undefined || rating === undefined) return [];
  const against = { x: -Math.cos(push), y: -Math.sin(push) };
  const from = farthestOn(vehicle, against);
  if (from === undefined) return [];
  const whole = plan.display === 'us' ? inch : 0.01;
  const to = (value: number) => Math.round(value / whole) * whole;
  const at = { x: to(from.at.x + away * against.x), y: to(from.at.y + away * against.y) };
  const anchor = freeName('N', anchorsIn(w));
  const tie = freeName('T', plan.ties);
  const units = plan.display;
  const holds = show(rating, 'force', units === 'us' ? 'lb' : 'kN', { rounding: 'up' });
  return [
    {
      title: message('remedy.strap-vehicle', {
        vehicle: name(vehicle.name),
        anchor: name(anchor),
        holds: quantity('force', rating, 'up'),
        toward: towardWords(push + Math.PI),
      }),
      edits: [
        {
          kind: 'insert',
          into: plan.ref,
          text: `anchor ${anchor} {\n  at     ${placeText(at, units)}\n  holds  ${holds}\n}`,
        },
        {
          kind: 'insert',
          into: plan.ref,
          text: `strap ${tie} : ${strap.gear.name} { from ${vehicle.name} ${from.part.id} ${placeText(from.at, units)} to ${anchor} }`,
        },
        ...workInSteps(plan, [{ action: 'tension', name: tie }]),
      ],
      safe: false,
    },
  ];
}

const anchorsIn = ({ plan }: Workings) =>
  plan.ties.flatMap((t) => [t.from, t.to].flatMap((end) => (end.kind === 'ground anchor' ? [end] : [])));

/** The end of a rail that may bear and lies farthest that way, a foot in from its end. */
function farthestOn(
  vehicle: Vehicle,
  way: PlanPoint,
): { readonly part: Part; readonly at: PlanPoint } | undefined {
  const ends = vehicle.parts
    .filter((p) => p.form === 'rails' && p.mayBear && !p.moves)
    .flatMap((part) =>
      pieces(part).flatMap(({ from, to }) =>
        [from.x + foot, to.x - foot].map((x) => ({
          part,
          at: toPlan(vehicle, { x, y: (from.y + to.y) / 2 }),
        })),
      ),
    );
  const along = ({ at }: { readonly at: PlanPoint }) => at.x * way.x + at.y * way.y;
  return ends.reduce<(typeof ends)[number] | undefined>(
    (best, next) => (best === undefined || along(next) > along(best) ? next : best),
    undefined,
  );
}

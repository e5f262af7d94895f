import { computed, given, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { minus, plus } from '../figure/interval-math.js';
import { force, length } from '../figure/units-of.js';
import { exactly } from '../model/interval.js';
import type { Plan } from '../model/plan.js';
import type { ElementId } from '../model/ref.js';
import type { StepChock } from '../model/support.js';
import type { Part, Vehicle } from '../model/vehicle.js';
import { type PartPlace, partNamed, placeAt } from '../placed/part-place.js';
import { underside } from '../placed/underside.js';
import { limitValue } from '../policy/limit.js';
import { baseHeight } from './gap.js';

/** A stepped block slid under a part until one of its steps meets it. */
export interface StepChockWorking {
  readonly chock: StepChock;
  readonly meets:
    | { readonly vehicle: Vehicle; readonly part: Part; readonly place: PartPlace; readonly hit: boolean }
    | undefined;
  /** Of the highest step that goes under the part. Unknown where none does. */
  readonly height: Figure;
  /** Left between that step and the part. */
  readonly gap: Figure;
  readonly capacity: Figure;
}

export function stepChockWorking(
  chock: StepChock,
  plan: Plan,
  vehicles: ReadonlyMap<ElementId, Vehicle>,
): StepChockWorking {
  const { display, policy } = plan;
  const reach = limitValue(policy, 'joist reach')?.low ?? 0;
  const found = chock.captures.flatMap((capture) => {
    const vehicle = vehicles.get(capture.vehicle);
    const part = vehicle === undefined ? undefined : partNamed(vehicle, capture.part);
    const place = vehicle === undefined || part === undefined ? undefined : placeAt(vehicle, part, chock.at);
    return vehicle === undefined || part === undefined || place === undefined
      ? []
      : [{ vehicle, part, place, hit: Math.hypot(place.off.x, place.off.y) <= reach + 1e-9 }];
  });
  const meets = found.find((f) => f.hit) ?? found[0];
  const part = given(
    length(display, 'partHeight', `underside of ${meets?.part.name ?? 'the captured part'}`, 'nearest', {
      ref: meets?.part.ref,
    }),
    meets === undefined ? undefined : underside(meets.vehicle, meets.part, meets.place.at),
    meets?.vehicle.source ?? { kind: 'unknown' },
  );
  const base = baseHeight(chock, plan.pads);
  const room = minus(part.value, base);
  const step =
    room === undefined
      ? undefined
      : chock.heights.filter((h) => h <= room.low + 1e-9).sort((a, b) => b - a)[0];
  const height = measured(
    length(display, 'height', 'height of the step that meets it', 'down', { ref: { element: chock.id } }),
    step === undefined ? undefined : exactly(step),
    'the highest step that goes under',
  );
  return {
    chock,
    meets,
    height,
    gap: computed(
      length(display, 'gap', 'gap left above the step', 'up', { ref: { element: chock.id } }),
      minus(part.value, plus(base, height.value)),
      '{part} − {height}',
      { part, height },
    ),
    capacity: given(
      force(display, 'capacity', 'capacity', 'down', { ref: chock.ref }),
      chock.capacity === undefined ? undefined : exactly(chock.capacity),
      chock.source,
    ),
  };
}

/** More than this above the step is not snug, m. Common practice, no source. */
export const snugGap = 0.0254;

/** Whether a step chock carries: it stands under the part, and one of its steps is snug. */
export const carries = ({ meets, gap }: StepChockWorking): boolean =>
  meets?.hit === true && gap.value !== undefined && gap.value.low <= snugGap + 1e-9;

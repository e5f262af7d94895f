import { planWith } from '../new-plan/plan-with.js';
import { exactly } from '../plan/interval.js';
import type { Ground, Plan, Step, StepAction } from '../plan/plan.js';
import type { VehicleContact } from '../plan/vehicle.js';
import { foot, inch, lb, minute, psf } from './measures.js';
import { crib } from './sample-supports.js';

export const asphalt: Ground = {
  surface: {
    name: 'asphalt',
    bearing: 4176 * psf,
    bearingSource: {
      kind: 'published',
      title: 'Crane outrigger ground-pressure table',
      locator: 'asphalt, 29 psi',
    },
    frictionTire: { low: 0.5, high: 0.65 },
    frictionTimber: { low: 0.4, high: 0.6 },
    frictionSource: { kind: 'from memory' },
    ref: { element: 'surface/asphalt' },
  },
  grade: 0,
  toward: 'rear',
  ref: { element: 'ground' },
};

/** Asphalt on which nothing slides: where a test sets the friction of the foot alone. */
export const gripping: Ground = {
  ...asphalt,
  surface: { ...asphalt.surface, frictionTire: exactly(2), frictionTimber: exactly(2) },
};

export const step = (
  number: number,
  action: StepAction,
  targets: readonly string[],
  change: Partial<Step> = {},
): Step => ({
  id: `step/${number}`,
  number,
  action,
  targets,
  with: [],
  after: [],
  crew: 2,
  takes: exactly(4 * minute),
  ref: { element: `step/${number}` },
  ...change,
});

/** A plan with nothing in it but what is given, on level asphalt. */
export const planOf = (parts: Partial<Plan>): Plan =>
  planWith({ title: 'Empty plan', ground: asphalt, vehicles: [], ...parts });

export const bearsOn = (lower: string, upper: string, x: number, y: number): VehicleContact => ({
  id: `contact/${lower}-${upper}`,
  lower: `vehicle/${lower}`,
  lowerPart: 'roof',
  upper: `vehicle/${upper}`,
  upperPart: 'rail',
  points: [
    { x: x - 1.5 * foot, y },
    { x: x + 1.5 * foot, y },
  ],
  coupled: false,
  stiffness: (1000 * lb) / inch,
  ref: { element: `vehicle/${lower}`, property: 'bears' },
});

export const sizedUp: Plan['sizeUp'] = (['fuel', 'battery', 'cargo', 'brakes'] as const).map((item) => ({
  item,
  finding: 'looked at, none',
  ref: { element: 'size up', property: item },
}));

export const side = 42.75 * inch;
export const carCribs = (under: string, x: number) =>
  [-1, 1].map((across) =>
    crib(across < 0 ? 'C1' : 'C2', x + across * 36.25 * inch, -6.5 * foot, {
      courses: 2,
      captures: [
        {
          vehicle: under,
          part: 'sills',
          ref: { element: across < 0 ? 'crib/C1' : 'crib/C2', property: 'captures' },
        },
      ],
    }),
  );

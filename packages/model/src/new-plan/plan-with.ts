import { shippedPolicy } from '../generated/shipped-policy.js';
import type { Plan } from '../plan/plan.js';

/** The parts of a plan that have no usual value: a plan has a title, stands somewhere and holds something. */
type Stated = Pick<Plan, 'title' | 'ground' | 'vehicles'>;

/**
 * A plan built in code: what is given, nothing of what is not, and the shipped policy unless another is given.
 * SI throughout: m, N, Pa, rad, s. Nothing is checked here; `analyze` of `@cribwright/rules` reports what is wrong.
 *
 * @param parts title, ground and vehicles (the first one is the main vehicle), and any other part of a `Plan`
 */
export const planWith = (parts: Stated & Partial<Plan>): Plan => ({
  id: 'plan',
  display: 'us',
  policy: shippedPolicy,
  contacts: [],
  cribs: [],
  stepChocks: [],
  struts: [],
  ties: [],
  chocks: [],
  pads: [],
  steps: [],
  crews: [],
  units: [],
  toolLoads: [],
  egress: [],
  sizeUp: [],
  expectations: [],
  acceptances: [],
  lifts: false,
  ref: { element: 'plan' },
  ...parts,
});

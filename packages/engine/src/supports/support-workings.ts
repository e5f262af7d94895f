import type { Figure } from '@cribwright/messages';
import type { ElementId, PlacedPlan, Plan, PolicyKey, Vehicle } from '@cribwright/model';
import type { CribWorking } from '../crib/crib-working.js';
import type { StepChockWorking } from '../crib/step-chock-working.js';
import type { BodyMass } from '../mass/body-mass.js';
import type { StrutWorking } from '../strut/strut-working.js';
import type { TieWorking } from '../strut/tie-working.js';

/** How much of an analysis to work out, and for which day. */
export interface AnalyzeOptions {
  /** ISO date of the reader's day, for acceptances that run out. The engine has no clock. */
  readonly today?: string;
  /** Also work out how hard a push the system holds: the one heavy model. */
  readonly push?: boolean;
  /** Also write out the sums of the load cases, to be followed on paper. */
  readonly paper?: boolean;
  /** Try the ends of the ranges alone, though a load may be higher between: for whoever types. The whole must follow. */
  readonly endsAlone?: boolean;
  /** Leave out every load, and the rules that hang on one: for whoever wants the rest at once. */
  readonly loads?: false;
}

/** Each body and each support of a plan by itself, before any load is known. */
export interface SupportWorkings {
  /** The plan as it stands: vehicles as they lie, timbers as the policy has them dressed. */
  readonly plan: Plan;
  /** All that follows from its geometry alone. */
  readonly placed: PlacedPlan;
  readonly options: AnalyzeOptions;
  readonly limit: (key: PolicyKey) => Figure;
  readonly vehicles: ReadonlyMap<ElementId, Vehicle>;
  readonly masses: () => ReadonlyMap<ElementId, BodyMass>;
  readonly cribs: () => readonly CribWorking[];
  readonly stepChocks: () => readonly StepChockWorking[];
  readonly struts: () => readonly StrutWorking[];
  readonly ties: () => readonly TieWorking[];
}

/** A vehicle's name, or the id where the plan has no such vehicle. */
export const nameOf = (w: Pick<SupportWorkings, 'vehicles'>, id: ElementId): string =>
  w.vehicles.get(id)?.name ?? id;

import type { System } from '@cribwright/units';
import type { PlanReply, Problem } from '@cribwright/workspace';
import type { Settings } from '../context/settings.js';

/** Whoever knows in which units the reader wants to see figures. */
export interface UnitsChoice {
  readonly settings: Pick<Settings, 'units'>;
}

/** The units in which a reader sees a problem: as the settings say, else as its plan asks. */
export const unitsOfProblem = (desk: UnitsChoice, problem: Pick<Problem, 'units'>): System =>
  desk.settings.units === 'plan' ? (problem.units ?? 'us') : desk.settings.units;

/** A reply whose plan asks for the units that its reader chose: for a client that draws it. */
export const inUnitsOf = (desk: UnitsChoice, reply: PlanReply): PlanReply =>
  desk.settings.units === 'plan'
    ? reply
    : { ...reply, plan: { ...reply.plan, display: desk.settings.units } };

/** The units in which a reader sees a plan: as the settings say, else as the plan asks. */
export const unitsFor = (desk: UnitsChoice, reply: Pick<PlanReply, 'plan'> | undefined): System =>
  desk.settings.units === 'plan' ? (reply?.plan.display ?? 'us') : desk.settings.units;

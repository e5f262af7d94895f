import type { System } from '@cribwright/units';
import type { PlanReply } from '../protocol/requests.js';
import type { Problem } from '../workspace/checked.js';
import type { Desk } from './desk.js';

/** The units in which a reader sees a problem: as the settings say, else as its plan asks. */
export const unitsOfProblem = (desk: Pick<Desk, 'settings'>, problem: Pick<Problem, 'units'>): System =>
  desk.settings.units === 'plan' ? (problem.units ?? 'us') : desk.settings.units;

/** The units in which a reader sees a plan: as the settings say, else as the plan asks. */
export const unitsFor = (desk: Pick<Desk, 'settings'>, reply: Pick<PlanReply, 'plan'> | undefined): System =>
  desk.settings.units === 'plan' ? (reply?.plan.display ?? 'us') : desk.settings.units;

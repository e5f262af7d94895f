import { type Words, wordsIn } from '@cribwright/messages';
import type { PlanReport } from './report.js';

/** The words of a plan's report: the units that the plan asks for. */
export const wordsOf = (plan: PlanReport): Words => wordsIn('en', plan.reply.plan.display);

/** The words of what belongs to no plan. */
export const words: Words = wordsIn('en', 'us');

import type { Shown } from '@cribwright/drawing';
import type { PlanReply } from '@cribwright/language';
import { NotUnderstood } from '../drawing/choice.js';
import type { Io } from '../io.js';
import { readReport } from './read-report.js';

/** A plan whose drawings and sheets say so where it could not be read whole. */
export type PlanToShow = PlanReply & { readonly analysis: Shown };

/** The plans of one file. Says on the error output where the text could not be read whole. @throws NotUnderstood */
export async function plansIn(io: Io, file: string): Promise<readonly PlanToShow[]> {
  const report = await readReport(io, [file]);
  const [bad] = report.unreadable;
  if (bad !== undefined) throw new NotUnderstood(`${bad.path}: ${bad.why}`);
  const plans = report.files.flatMap((f) => f.plans.map((p) => p.reply));
  if (plans.length === 0) throw new NotUnderstood(`There is no plan in ${file} that can be drawn.`);
  if (plans.some((p) => p.partial)) io.err(`${file} has errors. What could not be read is not shown.\n`);
  return plans.map((p) => (p.partial ? { ...p, analysis: { ...p.analysis, partial: true } } : p));
}

/** The plan of that title, or the first one. @throws NotUnderstood */
export function planNamed(plans: readonly PlanToShow[], title: string | undefined): PlanToShow {
  const [first] = plans;
  const found = title === undefined ? first : plans.find((p) => p.plan.title === title);
  if (found !== undefined) return found;
  const titles = plans.map((p) => `“${p.plan.title}”`).join(', ');
  throw new NotUnderstood(`There is no plan “${title}” in this file. There are: ${titles}.`);
}

import type { Shown } from '@cribwright/drawing';
import { list, message, name, term } from '@cribwright/messages';
import { group } from '@cribwright/units';
import type { PlanReply } from '@cribwright/workspace';
import { hasErrors } from '../report/outcome.js';
import type { CheckReport } from '../report/report.js';
import { plainSpeech, type Speech } from '../report/words.js';
import type { Io } from '../terminal/io.js';
import { NotUnderstood } from '../terminal/not-understood.js';
import { printable } from '../terminal/paint.js';
import { readReport } from './read-report.js';

/** A plan whose drawings and sheets say so where it was not read whole. */
export type PlanToShow = PlanReply & { readonly analysis: Shown };

/** The plans of one file. */
export interface PlansToShow {
  readonly plans: readonly PlanToShow[];
  /** Something could not be read. What is made of the plans may lack a part, and the command must not end with 0. */
  readonly errors: boolean;
}

/** The plans of one file. Says on the error output what could not be read. @throws NotUnderstood */
export async function plansIn(io: Io, file: string, speech: Speech = plainSpeech): Promise<PlansToShow> {
  const report = await readReport(io, [file]);
  const [bad] = report.unreadable;
  if (bad !== undefined)
    throw new NotUnderstood(message('cli.path-not-read', { path: name(bad.path), why: bad.why }));
  const plans = report.files.flatMap((f) => f.plans.map((p) => p.reply));
  sayErrors(io, report, speech);
  if (plans.length === 0) throw new NotUnderstood(message('cli.nothing-to-draw', { path: name(file) }));
  return { plans: plans.map(toShow), errors: hasErrors(report) };
}

/** A plan with its mark, where it was not read whole. */
export const toShow = (reply: PlanReply): PlanToShow =>
  reply.partial ? { ...reply, analysis: { ...reply.analysis, partial: true, unread: reply.unread } } : reply;

/** As many places as are listed on the error output. */
const most = 12;

/** Says on the error output what could not be read in the files, and in those that their plans read from. */
export function sayErrors(io: Io, report: CheckReport, { words } = plainSpeech): void {
  const own = report.files.flatMap((f) => f.problems.filter((p) => p.severity === 'danger'));
  const far = report.files.flatMap((f) => f.plans.flatMap((p) => p.unread));
  const lines = new Set(
    [...own, ...far].map(
      ({ place: { path, range }, message }) => `${path}:${range.start.line + 1}: ${words.message(message)}`,
    ),
  );
  if (lines.size === 0) return;
  const left = lines.size - most;
  io.err(`${words.message(term('cli.written-lacks'))}\n`);
  for (const line of [...lines].slice(0, most)) io.err(`${printable(line)}\n`);
  if (left > 0) io.err(`${words.message(message('cli.more', { count: name(group(left)) }))}\n`);
}

/** The plan of that title, or the first one. @throws NotUnderstood */
export function planNamed(plans: readonly PlanToShow[], title: string | undefined): PlanToShow {
  const [first] = plans;
  const found = title === undefined ? first : plans.find((p) => p.plan.title === title);
  if (found !== undefined) return found;
  throw new NotUnderstood(
    message('cli.no-plan-named', {
      plan: name(title ?? ''),
      plans: list(
        plans.map((p) => message('cli.quoted', { text: name(p.plan.title) })),
        'plain',
      ),
    }),
  );
}

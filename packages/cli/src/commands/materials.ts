import { caution, type MaterialsResult } from '@cribwright/engine';
import { sayErrors } from '../files/plans-in.js';
import { readReport } from '../files/read-report.js';
import { hasErrors } from '../report/outcome.js';
import type { PlanReport } from '../report/report.js';
import { wordsOf } from '../report/words.js';
import { columns } from '../terminal/columns.js';
import { type Paint, paintFor, printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

/** `cribwright materials PATH…`: what each plan needs, what comes with the units, and what is short. */
export const materials: CommandPart = {
  add: (program, io, ends) =>
    program
      .command('materials')
      .summary('list what the plans need, what the units carry, and what is short')
      .description(
        'Ends with 0 when nothing is short, 1 when something is, 2 when a file could not be read, or not all that a ' +
          'plan reads from: then a part of what is needed may be missing from the list.',
      )
      .argument('<path...>', 'files or folders')
      .action(async (paths: string[]) => {
        const report = await readReport(io, paths);
        const paint = paintFor(io, io.env);
        const plans = report.files.flatMap((f) => f.plans);
        io.out(
          `${plans.map((p) => planTable(p, paint)).join('\n')}\n${paint('strong', 'Limits of this tool.')}\n${caution}\n`,
        );
        sayErrors(io, report);
        for (const { path, why } of report.unreadable) io.err(`${printable(path)}: ${printable(why)}\n`);
        const short = plans.some((p) => p.reply.analysis.materials?.rows.some(isShort));
        ends(report.unreadable.length > 0 || hasErrors(report) ? 2 : short ? 1 : 0);
      }),
};

type Row = MaterialsResult['rows'][number];

const isShort = (row: Row): boolean => row.short.value === undefined || row.short.value.high > 0;

function planTable(plan: PlanReport, paint: Paint): string {
  const rows = plan.reply.analysis.materials?.rows ?? [];
  const mark = plan.reply.partial
    ? paint('danger', '\n  NOT READ WHOLE: part of what is needed may be missing from this list.')
    : '';
  const title = `${paint('strong', printable(plan.title))}${mark}`;
  const say = wordsOf(plan);
  if (rows.length === 0) return `${title}\n  needs nothing from a cache\n`;
  const table = columns(
    ['', 'needed', 'carried', 'short'],
    rows.map((r) => [
      printable(say.message(r.item)),
      say.value(r.needed),
      say.value(r.carried),
      say.value(r.short),
    ]),
  );
  const [head = '', ...body] = table;
  const marked = body.map((line, i) => {
    const row = rows[i];
    return row !== undefined && isShort(row) ? paint('danger', `${line}  SHORT`) : line;
  });
  return `${title}\n${[paint('quiet', head), ...marked].join('\n')}\n`;
}

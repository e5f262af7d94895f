import type { MaterialsResult } from '@cribwright/engine';
import { term, type Words } from '@cribwright/messages';
import { sayErrors } from '../files/plans-in.js';
import { readReport } from '../files/read-report.js';
import { hasErrors } from '../report/outcome.js';
import type { PlanReport } from '../report/report.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import { columns } from '../terminal/columns.js';
import { type Paint, paintFor, printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

/** `cribwright materials PATH…`: what each plan needs, what comes with the units, and what is short. */
export const materials: CommandPart = {
  add: (program, io, ends, words) => {
    const say = words.message;
    withUnits(withLanguage(program.command('materials'), words), words)
      .summary(say(term('command.materials-summary')))
      .description(say(term('command.materials')))
      .argument(`<${say(term('command.path-wanted'))}...>`, say(term('command.paths')))
      .action(async (paths: string[], options: SpeechOptions) => {
        const speech = speechOf(options);
        const report = await readReport(io, paths);
        const paint = paintFor(io, io.env);
        const plans = report.files.flatMap((f) => f.plans);
        io.out(
          `${plans.map((p) => planTable(p, paint, speech.wordsOf(p))).join('\n')}\n${paint('strong', speech.words.message(term('caution.heading')))}\n${speech.words.message(term('caution.text'))}\n`,
        );
        sayErrors(io, report, speech);
        for (const { path, why } of report.unreadable)
          io.err(`${printable(path)}: ${printable(speech.words.message(why))}\n`);
        const short = plans.some((p) => p.reply.analysis.materials?.rows.some(isShort));
        ends(report.unreadable.length > 0 || hasErrors(report) ? 2 : short ? 1 : 0);
      });
  },
};

type Row = MaterialsResult['rows'][number];

const isShort = (row: Row): boolean => row.short.value === undefined || row.short.value.high > 0;

function planTable(plan: PlanReport, paint: Paint, say: Words): string {
  const rows = plan.reply.analysis.materials?.rows ?? [];
  const mark = plan.reply.partial ? paint('danger', `\n  ${say.message(term('cli.list-may-lack'))}`) : '';
  const title = `${paint('strong', printable(plan.title))}${mark}`;
  if (rows.length === 0) return `${title}\n  ${say.message(term('cli.needs-nothing'))}\n`;
  const table = columns(
    ['', ...[term('cli.needed'), term('cli.carried'), term('cli.short')].map(say.message)],
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
    return row !== undefined && isShort(row)
      ? paint('danger', `${line}  ${say.message(term('cli.short-mark'))}`)
      : line;
  });
  return `${title}\n${[paint('quiet', head), ...marked].join('\n')}\n`;
}

import { writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { inOneGo } from '@cribwright/engine/internal';
import { count, message, name, shown, term, type Words } from '@cribwright/messages';
import { readPlanFile } from '@cribwright/server';
import { type Effect, makeSafe, openWorkspace, type SafetyPlan } from '@cribwright/workspace';
import { findCribFiles, shortPath } from '../files/crib-files.js';
import { folderOf } from '../files/folder-of.js';
import { readText } from '../files/read-text.js';
import { unreadableWords } from '../files/unreadable-words.js';
import { changedLines } from '../fix/changed-lines.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import type { Io } from '../terminal/io.js';
import { type Paint, paintFor, printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

interface Options extends SpeechOptions {
  readonly dryRun?: boolean;
}

/** `cribwright fix PATH…`: takes the fixes that make plans safe, each tried before it is taken. */
export const fix: CommandPart = {
  add: (program, io, ends, help) => {
    const say = help.message;
    withUnits(withLanguage(program.command('fix'), help), help)
      .summary(say(term('command.fix-summary')))
      .description(say(term('command.fix')))
      .argument(`<${say(term('command.path-wanted'))}...>`, say(term('command.paths')))
      .option('-n, --dry-run', say(term('command.dry-run')))
      .action(async (paths: string[], options: Options) => {
        const { words } = speechOf(options);
        const paint = paintFor(io, io.env);
        const found = await findCribFiles(io.cwd, paths);
        let code: 0 | 1 | 2 = 0;
        const worst = (other: 1 | 2): void => {
          code = other > code ? other : code;
        };
        for (const { path, why } of found.missing) {
          io.err(`${printable(path)}: ${printable(words.message(why))}\n`);
          worst(2);
        }
        for (const file of found.files) {
          const shown = shortPath(io.cwd, file.path);
          const text = await readPlanFile(file.path, file.within);
          if (typeof text !== 'string') {
            io.err(
              `${printable(shown)}: ${printable(words.message(unreadableWords[text?.unreadable ?? 'gone']))}\n`,
            );
            worst(2);
            continue;
          }
          const plan = await planFor(io, file.path, text);
          io.out(stepsText(shown, plan, paint, words));
          for (const [uri, after] of Object.entries(plan.texts)) {
            const target = fileURLToPath(uri);
            const before =
              uri === pathToFileURL(file.path).href ? text : await readPlanFile(target, undefined);
            if (options.dryRun === true)
              io.out(
                changedLines(
                  shortPath(io.cwd, target),
                  typeof before === 'string' ? before : '',
                  after,
                  paint,
                ),
              );
            else writeFileSync(target, after);
          }
          if (plan.left.length > 0) worst(1);
        }
        io.out(
          `${paint('strong', words.message(term('caution.heading')))}\n${words.message(term('caution.text'))}\n`,
        );
        ends(code);
      });
  },
};

async function planFor(io: Io, path: string, text: string): Promise<SafetyPlan> {
  const workspace = openWorkspace({
    files: { read: readText },
    folders: [pathToFileURL(folderOf(path, io.cwd)).href],
    today: io.today,
  });
  const uri = pathToFileURL(path).href;
  workspace.put(uri, text, 1);
  await workspace.load(uri);
  return inOneGo(makeSafe(workspace, uri));
}

const effectWords = ({ label, before, after }: Effect) =>
  message('advice.effect', { label, before: shown(before), after: shown(after) });

function stepsText(
  path: string,
  { steps, left, expectations }: SafetyPlan,
  paint: Paint,
  words: Words,
): string {
  const lines = [
    paint('strong', printable(path)),
    ...(steps.length + left.length === 0 ? [`  ${words.message(term('fix.nothing-to-do'))}`] : []),
    ...steps.flatMap(({ problem, title, on, effect, unsafe: [before, after] }, i) => [
      `  ${words.message(message('fix.step', { number: count(i + 1), title }))}  ${paint('quiet', on === undefined ? problem.code : printable(words.message(message('advice.rule-on', { rule: name(problem.code), on }))))}`,
      `     ${printable(words.message(problem.message))}`,
      ...(effect === undefined ? [] : [`     ${paint('good', words.message(effectWords(effect)))}`]),
      `     ${paint('good', words.message(message('advice.unsafe', { before: count(before), after: count(after) })))}`,
    ]),
    ...left.map(
      (p) =>
        `  ${paint('danger', words.message(term('fix.left')))}  ${paint('strong', p.code)}  ${printable(words.message(p.message))}`,
    ),
    ...(left.length > 0
      ? [`  ${words.message(message('fix.no-fix', { count: count(left.length) }))}`]
      : steps.length > 0
        ? [`  ${words.message(message('fix.all-safe', { count: count(steps.length) }))}`]
        : []),
    ...(steps.length > 0
      ? expectations.map(
          (p) => `  ${words.message(term('fix.expectation'))} ${printable(words.message(p.message))}`,
        )
      : []),
    '',
  ];
  return `${lines.join('\n')}\n`;
}

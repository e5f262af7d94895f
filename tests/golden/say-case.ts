import { english } from '@cribwright/messages/testing';
import { openWorkspace, type Problem, positionOf } from '@cribwright/workspace';
import type { Case } from './case-file.js';
import { settings } from './settings.js';

const folder = 'file:///alder-ridge';

/** Rules that run only where the pushes are asked for. */
const withPushes = ['coupling-missing', 'loss-moves', 'push-margin', 'stage-moves'];

/** What is said of a case: each problem with its line, its range underlined, its words, and what each fix makes. */
export async function sayCase(c: Case, source: 'text' | 'plan', code: string): Promise<string> {
  const setting = settings[c.inside];
  if (setting === undefined) throw new Error(`no setting named ${c.inside}`);
  const { main, others } = filesIn(c.source);
  const start = setting.indexOf('@');
  const text = setting.replace('@', () => main);
  const uri = `${folder}/plans/case.crib`;
  const texts = new Map([...others, [uri, text]]);
  const workspace = openWorkspace({
    files: { read: async (u) => texts.get(u) },
    folders: [folder],
    today: '2026-11-25',
    push: withPushes.includes(code),
  });
  await workspace.load(uri);
  const { problems } = workspace.check(uri);
  const near = (p: Problem) => p.span.end >= start && p.span.start <= start + main.length;
  // Of a rule's plans only what that rule says is held here.
  const ours = problems.filter(
    (p) => p.source === source && near(p) && (source === 'text' || p.code === code),
  );
  if (ours.length === 0) return 'nothing\n';
  return ours.map((p) => sayProblem(p, text, start, main, uri)).join('\n');
}

/** Further files of a case follow a line `// file: caches/x.crib`. */
function filesIn(source: string): { readonly main: string; readonly others: ReadonlyMap<string, string> } {
  const [main = '', ...rest] = source.split(/^\/\/ file: /m);
  return {
    main,
    others: new Map(
      rest.map((part) => {
        const end = part.indexOf('\n');
        return [`${folder}/${part.slice(0, end).trim()}`, part.slice(end + 1)];
      }),
    ),
  };
}

function sayProblem(p: Problem, text: string, start: number, main: string, uri: string): string {
  const piece = text.slice(start, start + main.length);
  const from = positionOf(piece, Math.max(0, p.span.start - start));
  const line = piece.split('\n')[from.line] ?? '';
  const length = Math.max(1, Math.min(p.span.end - p.span.start, line.length - from.character));
  const said = [
    `${from.line + 1}:${from.character + 1} ${p.code} (${p.severity})`,
    `  ${line}`,
    `  ${' '.repeat(from.character)}${'^'.repeat(length)}`,
    ...english(p.message)
      .split('\n')
      .map((l) => `  ${l}`),
    ...p.related.map((r) => `  see: ${english(r.message)}`),
    ...p.fixes.flatMap((f) => [
      `  fix${f.safe ? ' (safe)' : ''}: ${english(f.title)}`,
      ...changed(text, f.edits[uri] ?? []).map((l) => `    ${l}`),
    ]),
  ];
  return `${said.join('\n')}\n`;
}

/** The lines that a fix makes different, as they then read. */
function changed(text: string, edits: Problem['fixes'][number]['edits'][string]): readonly string[] {
  let result = text;
  for (const e of [...edits].sort((a, b) => b.span.start - a.span.start)) {
    result = result.slice(0, e.span.start) + e.text + result.slice(e.span.end);
  }
  const before = text.split('\n');
  const after = result.split('\n');
  let head = 0;
  while (head < before.length && before[head] === after[head]) head++;
  let tail = 0;
  while (
    tail < before.length - head &&
    tail < after.length - head &&
    before.at(-1 - tail) === after.at(-1 - tail)
  )
    tail++;
  const gone = before.slice(head, before.length - tail);
  const come = after.slice(head, after.length - tail);
  return come.length === 0 ? gone.map((l) => `- ${l.trim()}`) : come.map((l) => `+ ${l.trim()}`);
}

import type { Workspace } from '@cribwright/workspace';
import { type Problem, positionOf } from '@cribwright/workspace';
import { afterFix, answer, inWords, slipped } from './answer.js';
import type { Group, Slip } from './slip.js';

/** What is said of every slip of a group, as a page: the line with its place marked, the message, the fix, and what it makes. */
export function goldenText(workspace: Workspace, group: Group): string {
  const cases = group.slips.map((slip) => `## ${slip.title}\n\n${fence(sayOf(workspace, slip))}\n`);
  const right = (group.accepted ?? []).map(
    ({ title, right, written }) =>
      `## Right as well: ${title}\n\n${fence(visible(linesAround(right, written)))}\n`,
  );
  return `# ${group.title}\n\nWhat is said of these slips, each made in the plan of \`tests/slips/base-plan.ts\`. Written by the tests; read the difference.\n\n${[...cases, ...right].join('\n')}`;
}

const fence = (text: string): string => `\`\`\`text\n${text}\n\`\`\``;

function sayOf(workspace: Workspace, slip: Slip): string {
  const { text } = slipped(slip);
  const { errors } = answer(workspace, text);
  return errors.map((p) => sayProblem(text, p)).join('\n\n');
}

function sayProblem(text: string, p: Problem): string {
  const { line, character } = positionOf(text, p.span.start);
  const written = text.split('\n')[line] ?? '';
  const length = Math.max(1, Math.min(p.span.end - p.span.start, written.length - character));
  const mark = `${line + 1} | `;
  const shown = [
    `${mark}${visible(written)}`,
    `${' '.repeat(mark.length + visible(written.slice(0, character)).length)}${'^'.repeat(length)}`,
    inWords(p),
  ];
  const fixed = afterFix(text, p);
  if (fixed === undefined) return shown.join('\n');
  const title = inWords({ message: p.fixes[0]?.title ?? p.message });
  return [...shown, '', `fix: ${title}`, ...changedLines(text, fixed)].join('\n');
}

/** The lines that a fix makes different, as they then read. */
function changedLines(before: string, after: string): readonly string[] {
  const [a, b] = [before.split('\n'), after.split('\n')];
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head++;
  let tail = 0;
  while (tail < a.length - head && tail < b.length - head && a.at(-1 - tail) === b.at(-1 - tail)) tail++;
  const come = b.slice(head, b.length - tail).map((l, i) => `${head + i + 1} | ${visible(l)}`);
  return come.length > 0 ? come : ['(removes the line)'];
}

const linesAround = (right: string, written: string): string => {
  const start = written.split('\n');
  return start.length > 3 ? start.slice(0, 3).join('\n') : written || right;
};

/** Signs that nobody sees, shown by their code. */
const visible = (text: string): string =>
  text.replace(
    /[^\P{C}\n]|[\u00a0\ue000-\uf8ff]/gu,
    (c) => `<U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`,
  );

import { name } from '@cribwright/messages';
import { plainSigns } from '@cribwright/syntax/internal';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';

/** The wide forms of the signs of a US keyboard, as keyboards of East Asia write them. They are read as meant. */
const wide = /[\uff01-\uff5e]+/g;

/** One error for all of them outside texts and comments: they are put right at once. */
export function fullWidthProblem(text: string): LanguageProblem | undefined {
  if (text.search(wide) < 0) return undefined;
  const plain = plainSigns(text);
  const runs = [...text.matchAll(wide)]
    .map(({ 0: run, index }) => ({ start: index, end: index + run.length, text: run }))
    .filter(({ start }) => plain[start] !== text[start]);
  const [first] = runs;
  if (!first) return undefined;
  const near = ({ start, end }: typeof first) => plain.slice(start, end);
  const fix = {
    title: problemMessage('strange-character--wide-fix', {}),
    edits: runs.map((run) => ({ span: { start: run.start, end: run.end }, text: near(run) })),
    safe: true,
  };
  const { start, end } = first;
  const holes = { text: name(first.text), near: name(near(first)) };
  return problem('strange-character--wide', { start, end }, holes, { fixes: [fix] });
}

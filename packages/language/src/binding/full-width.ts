import { name } from '@cribwright/messages';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';

/** The wide forms of the signs of a US keyboard, as keyboards of East Asia write them. They are read as meant. */
const wide = /[\uff01-\uff5e]+/g;
/** Quotes and comments may hold anything. */
const kept = /"[^"\r\n]*"?|\/\/[^\r\n]*|\/\*[\s\S]*?(?:\*\/|$)/g;

/** One error for all of them: they are put right at once. */
export function fullWidthProblem(text: string): LanguageProblem | undefined {
  if (text.search(wide) < 0) return undefined;
  const plain = text.replace(kept, (m) => ' '.repeat(m.length));
  const runs = [...plain.matchAll(wide)].map((m) => ({
    start: m.index,
    end: m.index + m[0].length,
    text: m[0],
  }));
  const [first] = runs;
  if (!first) return undefined;
  const fix = {
    title: problemMessage('strange-character--wide-fix', {}),
    edits: runs.map(({ start, end, text: run }) => ({ span: { start, end }, text: narrow(run) })),
    safe: true,
  };
  const { start, end } = first;
  return problem(
    'strange-character--wide',
    { start, end },
    { text: name(first.text), near: name(narrow(first.text)) },
    { fixes: [fix] },
  );
}

const narrow = (run: string): string =>
  run.replace(wide, (m) => [...m].map((c) => String.fromCharCode(c.charCodeAt(0) - 0xfee0)).join(''));

import type { Parsed } from '@cribwright/syntax/internal';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';

/** Whether a text was written in two bytes a sign and read as one: every other sign is then a zero. */
export const isUtf16 = (text: string): boolean => {
  const start = text.slice(0, 64);
  const zeros = start.split('\0').length - 1;
  return zeros > 0 && zeros >= Math.floor(start.length / 3);
};

/** What a decoder puts where it can make nothing of the bytes. */
const unreadable = '\ufffd';

const firstPlan =
  'plan "What happened, and where" {\n  ground {\n    surface asphalt\n    grade 0 %\n  }\n}\n';

/** What is wrong with a file as a whole: its encoding, or that nothing stands in it. */
export function fileProblems({ statements, issues }: Parsed, text: string): readonly LanguageProblem[] {
  if (isUtf16(text)) return [problem('file-not-utf8--utf16', { start: 0, end: 1 }, {})];
  const lost = text.indexOf(unreadable);
  if (lost >= 0) return [problem('file-not-utf8', { start: lost, end: lost + 1 }, {})];
  if (statements.length > 0 || issues.length > 0) return [];
  const at = { start: text.length, end: text.length };
  const before = text === '' || text.endsWith('\n') ? '' : '\n';
  const fix = {
    title: problemMessage('file-empty--fix', {}),
    edits: [{ span: at, text: `${before}${firstPlan}` }],
    safe: false,
  };
  const key = text.trim() === '' ? 'file-empty' : 'file-empty--comments';
  // A file without a plan is no fault of its text, as caches and libraries have none; but nothing is checked in it.
  return [
    problem(key, { start: 0, end: Math.min(1, text.length) }, {}, { severity: 'warning', fixes: [fix] }),
  ];
}

import { append, type Parsed, plainSigns, type SyntaxStatement } from '@cribwright/syntax/internal';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { braceProblems } from './brace-problems.js';
import { fileProblems, isUtf16 } from './file-problems.js';
import { fullWidthProblem } from './full-width.js';
import { signProblems } from './sign-problems.js';

/** What is wrong with braces, quotes, comments and characters. A formatter leaves such a file alone. */
export function layoutProblems(parsed: Parsed, text: string): readonly LanguageProblem[] {
  const whole = fileProblems(parsed, text);
  if (isUtf16(text)) return whole;
  const problems: LanguageProblem[] = [...whole];
  const walk = (list: readonly SyntaxStatement[]): void => {
    for (const s of list) {
      append(problems, signProblems(s, text));
      if (s.body) walk(s.body.statements);
    }
  };
  walk(parsed.statements);
  const wide = fullWidthProblem(text);
  if (wide) problems.push(wide);
  const open = openComment(text);
  // A comment that never ends takes the closing braces with it.
  if (open) {
    const fix = replace(problemMessage('comment-not-closed--fix', {}), open, '//');
    return [...problems, problem('comment-not-closed', open, {}, { fixes: [fix] })];
  }
  if (parsed.issues.length === 0) return problems;
  return [...braceProblems(parsed.issues, plainSigns(text)), ...problems];
}

/** A comment that starts and never ends takes the rest of the file with it. Lines break as in the grammar. */
function openComment(text: string): { start: number; end: number } | undefined {
  if (!text.includes('/*')) return undefined;
  const plain = plainSigns(text);
  const tokens =
    /\/\/[^\r\n\v\f\u0085\u2028\u2029]*|"[^"\r\n\v\f\u0085\u2028\u2029]*"?|\/\*[\s\S]*?\*\/|\/\*/g;
  for (const m of plain.matchAll(tokens)) if (m[0] === '/*') return { start: m.index, end: m.index + 2 };
  return undefined;
}

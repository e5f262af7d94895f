import { name } from '@cribwright/messages';
import type { BoundFile } from '../bound/bound-file.js';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import type { Surroundings } from './file-scope.js';

/** What nothing refers to: calculated values, parameters, and files used for nothing. Faded, never an error. */
export function unusedProblems(file: BoundFile, around: Surroundings): readonly LanguageProblem[] {
  const used = new Set(file.references.flatMap((r) => r.target ?? []));
  const values = file.declarations.filter(
    (d) =>
      (d.kind === 'value' ? d.scope !== undefined : d.kind === 'parameter' || d.kind === 'anchor') &&
      !used.has(d),
  );
  const names = values.map((d) =>
    problem(
      'unused-name',
      d.nameSpan,
      { text: name(d.name) },
      {
        severity: 'unused',
        fixes:
          d.kind === 'parameter'
            ? []
            : [
                {
                  title: problemMessage('unused-name--fix', { text: name(d.name) }),
                  edits: [{ span: wholeLines(file.text, d.span), text: '' }],
                  safe: false,
                },
              ],
      },
    ),
  );
  const seen = new Set([...used].map((d) => d.uri));
  const files = file.uses
    .filter((u) => u.target !== undefined && !seen.has(u.target) && around.shapeOf(u.target) !== undefined)
    .map((u) =>
      problem(
        'unused-use',
        u.span,
        { file: name(u.path) },
        {
          severity: 'unused',
          fixes: [
            {
              title: problemMessage('unused-use--fix', {}),
              edits: [{ span: wholeLines(file.text, u.span), text: '' }],
              safe: true,
            },
          ],
        },
      ),
    );
  return [...names, ...files];
}

/** The span with its line break, where it fills its lines. */
export function wholeLines(text: string, span: { readonly start: number; readonly end: number }) {
  const start = text.lastIndexOf('\n', span.start - 1) + 1;
  const breakAt = text.indexOf('\n', span.end);
  const end = breakAt < 0 ? text.length : breakAt + 1;
  const alone = text.slice(start, span.start).trim() === '' && text.slice(span.end, end).trim() === '';
  return alone ? { start, end } : span;
}

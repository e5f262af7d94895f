import type { Message } from '@cribwright/messages';
import { list, name } from '@cribwright/messages';
import type { BoundBlock } from '../bound/bound-file.js';
import { type LanguageProblem, problem, type TextFix } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import type { DraftBlock } from './draft.js';
import type { Surroundings } from './file-scope.js';
import { inheritedBlocks } from './inherited-blocks.js';
import { subjectOf } from './place-words.js';

/** Lines that must stand and do not, unless a type that it extends says them. */
export function missingLines(
  block: DraftBlock,
  around: Surroundings,
  text: string,
): readonly LanguageProblem[] {
  const bound = block as BoundBlock;
  const inherited = inheritedBlocks(bound, around);
  const { bodySpan } = block;
  // What seems to be missing may be the line that could not be read.
  if (!bodySpan || block.hasStray || block.misread) return [];
  const missing = block.schema.properties.filter(
    (p) =>
      p.required &&
      ![bound, ...inherited].some((b) => b.properties.some((line) => line.schema.key === p.key)),
  );
  const first = missing[0];
  if (!first) return [];
  const at = { start: bodySpan.end - 1, end: bodySpan.end - 1 };
  const add = (title: Message, lines: readonly string[]): TextFix => ({
    title,
    edits: [{ span: at, text: insertion(text, block, lines) }],
    safe: false,
  });
  const subject = subjectOf(bound);
  // After a comma the line goes on: what is added would become part of it.
  const goesOn = text.slice(0, at.start).trimEnd().endsWith(',');
  if (missing.length === 1) {
    const { key, example } = first;
    const fixes = goesOn ? [] : [add(problemMessage('line-missing--fix', { key: name(key) }), [example])];
    return [
      problem('line-missing', block.headSpan, { subject, key: name(key), example: name(example) }, { fixes }),
    ];
  }
  const keys = list(
    missing.map((p) => name(p.key)),
    'plain',
  );
  const fixes = goesOn
    ? []
    : [
        add(
          problemMessage('line-missing--all-fix', {}),
          missing.map((p) => p.example),
        ),
      ];
  return [problem('line-missing--several', block.headSpan, { subject, keys }, { fixes })];
}

/** New last lines for a block, in the block's own indentation. */
function insertion(
  text: string,
  block: Pick<DraftBlock, 'bodySpan' | 'span' | 'properties' | 'blocks'>,
  lines: readonly string[],
): string {
  const end = (block.bodySpan?.end ?? 0) - 1;
  const lineStart = text.lastIndexOf('\n', end - 1) + 1;
  const ownLine = text.slice(lineStart, end).trim() === '';
  const indent = /^[ \t]*/.exec(text.slice(text.lastIndexOf('\n', block.span.start - 1) + 1))?.[0] ?? '';
  if (ownLine) return `${lines.map((line) => `  ${line}\n`).join(indent)}${indent}`;
  const empty = block.properties.length === 0 && block.blocks.length === 0;
  return `${empty ? ' ' : '; '}${lines.join('; ')} `;
}

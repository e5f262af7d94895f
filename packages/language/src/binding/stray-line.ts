import { list, type Message, name } from '@cribwright/messages';
import type { SyntaxStatement } from '@cribwright/syntax/internal';
import { closest } from '@cribwright/units';
import { literalWords } from '../phrase/literal-words.js';
import { renamedAt } from '../phrase/renamed-words.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import type { AllowedLines } from '../schema/schema.js';
import type { DraftBlock } from './draft.js';
import { choices, inKind, where } from './place-words.js';
import { ownerOf, wordsAt } from './statement-key.js';

/** `chock trailer both directions` in the steps: the number in front was left out. */
export function stepWithoutNumber(
  s: SyntaxStatement,
  block: DraftBlock | undefined,
): LanguageProblem | undefined {
  const numbered = block?.schema.numbered;
  const first = s.terms[0];
  if (!numbered || first?.kind !== 'word' || !literalWords(numbered.phrase).has(first.text)) return undefined;
  const number = block.properties.reduce((most, p) => Math.max(most, Number(p.key) || 0), 0) + 1;
  const near = `${number} ${first.text}`;
  const at = { start: first.start, end: first.start };
  return problem(
    'step-number-missing',
    first,
    { example: name(numbered.example) },
    { fixes: [replace(problemMessage('step-number-missing--fix', { near: name(near) }), at, `${number} `)] },
  );
}

/** What to say of a line that starts as it did before the language changed. */
export function renamedLine(
  terms: SyntaxStatement['terms'],
  keys: readonly string[],
  place: Message,
): LanguageProblem | undefined {
  const found = renamedAt(terms, 0, 'line', (now) => keys.some((k) => `${now} `.startsWith(`${k} `)));
  return (
    found &&
    problem(
      'unknown-line--near',
      found.span,
      { what: name(found.text), where: place, near: name(found.now) },
      {
        fixes: [
          replace(problemMessage('unknown-line--fix', { near: name(found.now) }), found.span, found.now),
        ],
      },
    )
  );
}

/** What to say of a line that starts with nothing that may stand there. */
export function unknownLine(
  s: SyntaxStatement,
  block: DraftBlock | undefined,
  sayable: AllowedLines,
): LanguageProblem | undefined {
  const first = s.terms[0];
  if (!first || first.kind === 'other') return undefined;
  if (block?.schema.keyword === 'crib' && closest(first.text, ['height', 'high', 'tall']) !== undefined) {
    return problem('unknown-line--height', first, {});
  }
  const keys = [...sayable.properties.keys(), ...sayable.blocks.keys()];
  const renamed = renamedLine(s.terms, keys, where(block));
  if (renamed) return renamed;
  const typed = [2, 1, 3].flatMap((n) => {
    const words = wordsAt(s.terms, n);
    const near =
      words &&
      closest(
        words.text,
        keys.filter((k) => k.split(' ').length === n || n === 1),
      );
    return words && near !== undefined ? [{ ...words, near }] : [];
  })[0];
  if (typed) {
    return problem(
      'unknown-line--near',
      typed.span,
      { what: name(typed.text), where: where(block), near: name(typed.near) },
      {
        fixes: [
          replace(problemMessage('unknown-line--fix', { near: name(typed.near) }), typed.span, typed.near),
        ],
      },
    );
  }
  const owner = ownerOf(s.terms);
  if (owner) {
    return problem('wrong-place', first, {
      what: name(owner.key),
      where: where(block),
      rightPlace: list([inKind(owner.block.keyword)], 'or'),
    });
  }
  const starts = choices(sayable);
  return starts === ''
    ? problem('unknown-line', first, { what: name(first.text), where: where(block) })
    : problem('unknown-line--choices', first, {
        what: name(first.text),
        where: where(block),
        choices: name(starts),
      });
}

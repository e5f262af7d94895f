import { list, name } from '@cribwright/messages';
import type { SyntaxStatement } from '@cribwright/syntax/internal';
import { closest } from '@cribwright/units';
import type { BlockSchema } from '../bound/block-schema.js';
import { literalWords } from '../phrase/literal-words.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { type AllowedLines, allowedIn, schema } from '../schema/schema.js';
import type { DraftBlock } from './draft.js';
import { choices, inKind, where } from './place-words.js';
import { keyAt } from './statement-key.js';

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
  const places = placesOfLine(s.terms, block);
  if (places) {
    return problem('wrong-place', places.span, {
      what: name(places.key),
      where: where(block),
      rightPlace: list(places.keywords.map(inKind), 'or'),
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

/** As many places as a sentence can hold. */
const mostPlaces = 3;

/** The blocks that a line belongs in, nearest first: those that may stand in the same blocks as the one it stands in. */
export function placesOfLine(terms: SyntaxStatement['terms'], block: DraftBlock | undefined) {
  const around: string[] = [];
  for (let b: DraftBlock | undefined = block; b; b = b.parent as DraftBlock | undefined)
    around.push(b.schema.keyword);
  const fits = (b: BlockSchema) =>
    b.within.some((w) => around.includes(w) || (w === 'file' && around.length === 0));
  const owners = schema.flatMap((b) => {
    const found = lineKey(terms, b);
    return found ? [{ keyword: b.keyword, ...found, near: fits(b) }] : [];
  });
  const near = owners.filter((o) => o.near);
  const [first] = near.length > 0 ? near : owners;
  if (!first) return undefined;
  const keywords = (near.length > 0 ? near : owners).map((o) => o.keyword).slice(0, mostPlaces);
  return { key: first.key, span: first.span, keywords };
}

function lineKey(terms: SyntaxStatement['terms'], block: BlockSchema) {
  const { properties, longest, numbered } = allowedIn(block);
  const [first, second] = terms;
  if (
    first?.kind === 'number' &&
    second?.kind === 'word' &&
    numbered &&
    literalWords(numbered.phrase).has(second.text)
  ) {
    return { key: first.text, span: { start: first.start, end: first.end } };
  }
  const found = keyAt(terms, { blocks: new Map(), properties, longest });
  const last = found && terms[found.length - 1];
  return found?.property && first && last
    ? { key: found.property.key, span: { start: first.start, end: last.end } }
    : undefined;
}

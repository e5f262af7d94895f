import { name } from '@cribwright/messages';
import type { Span, Term } from '@cribwright/syntax/internal';
import { closest, findUnit } from '@cribwright/units';
import type { Stop } from '../phrase/matching.js';
import { renamedAt } from '../phrase/renamed-words.js';
import type { NameScope } from '../phrase/scope.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { allowedIn } from '../schema/schema.js';
import type { DraftLine } from './draft.js';
import { keyAt } from './statement-key.js';

/** Where a line could not be read on, with all that tells why. */
export interface StoppedLine {
  readonly line: DraftLine;
  readonly stop: Stop;
  readonly scope: NameScope;
  readonly text: string;
}

type Slip = (s: StoppedLine, term: Term) => LanguageProblem | undefined;

/** Slips that crews are known to make, each with what was meant. `undefined` where it is none of them. */
export function knownSlip(s: StoppedLine): LanguageProblem | undefined {
  const term = s.line.terms[s.stop.at];
  if (!term || term.kind === 'other') return undefined;
  for (const slip of slips) {
    const found = slip(s, term);
    if (found) return found;
  }
  return undefined;
}

const expects = ({ stop }: StoppedLine, kind: Stop['expected'][number]['kind']): boolean =>
  stop.expected.some((e) => e.kind === kind);
const wordsExpected = ({ stop }: StoppedLine): readonly string[] =>
  stop.expected.flatMap((e) => (e.kind === 'word' ? [e.word] : []));
const spanOf = ({ start, end }: Span): Span => ({ start, end });
const write = (near: string, span: Span, text = near) =>
  replace(problemMessage('number-malformed--fix', { near: name(near) }), span, text);

/** `under trailer holds both directions`: the next line of the block without what parts it from this one. */
const joined: Slip = ({ line, stop, text }, term) => {
  const allowed = line.block ? allowedIn(line.block.schema) : undefined;
  if (!allowed || stop.at <= line.from) return undefined;
  const comma = term.text === ',';
  const rest = line.terms.slice(stop.at + (comma ? 1 : 0));
  const numbered = allowed.numbered && rest[0]?.kind === 'number' && rest[1]?.kind === 'word';
  const key = keyAt(rest, allowed);
  if (!numbered && !key?.property) return undefined;
  const gap = { start: line.terms[stop.at - 1]?.end ?? term.start, end: rest[0]?.start ?? term.end };
  if (comma) {
    // A line break follows, so that nothing else is needed.
    const broken = /[\r\n]/.test(text.slice(term.end, rest[0]?.start));
    const fix = broken
      ? replace(problemMessage('word-unexpected--drop', { text: name(',') }), term, '')
      : replace(problemMessage('line-joined--comma-fix', {}), term, ';');
    return problem('line-joined--comma', term, {}, { fixes: [fix] });
  }
  const keyword = name(numbered ? (rest[0]?.text ?? '') : (key?.property?.key ?? ''));
  const example = name((numbered ? allowed.numbered : key?.property)?.example ?? '');
  const end = rest[(key?.length ?? 1) - 1]?.end ?? term.end;
  const fix = replace(problemMessage('line-joined--fix', {}), gap, '; ');
  return problem('line-joined', { start: term.start, end }, { keyword, example }, { fixes: [fix] });
};

/** `3 ft and 2 in`, `3 ft, 2 in`: nothing goes between feet and inches. */
const between: Slip = ({ line, stop, text }, term) => {
  const [before, after, unit] = [line.terms[stop.at - 1], line.terms[stop.at + 1], line.terms[stop.at + 2]];
  const feet = before?.kind === 'word' && findUnit(before.text)?.id === 'ft';
  const inches = after?.kind === 'number' && unit?.kind === 'word' && findUnit(unit.text)?.id === 'in';
  if (!feet || !inches || !/^(?:and|,|\+)$/.test(term.text)) return undefined;
  const number = line.terms[stop.at - 2]?.start ?? before.start;
  const near = `${text.slice(number, before.end)} ${text.slice(after.start, unit.end)}`;
  const fix = write(near, { start: before.end, end: after.start }, ' ');
  return problem('strange-character--and', spanOf(term), { near: name(near) }, { fixes: [fix] });
};

const numberWords =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );

/** `eleven`, `l1`, `1O`: numbers in words, and letters in the place of digits. */
const notDigits: Slip = (s, term) => {
  const before = s.line.terms[s.stop.at - 1];
  if (term.kind !== 'word') return undefined;
  const glued = before?.kind === 'number' && before.end === term.start && /^[OolI]+$/.test(term.text);
  const start = glued ? before.start : term.start;
  const written = s.text.slice(start, term.end);
  const digits = written.replace(/[Oo]/g, '0').replace(/[lI]/g, '1');
  const span = { start, end: term.end };
  if ((glued || expects(s, 'quantity')) && /\d/.test(written) && /^\d+$/.test(digits)) {
    const holes = { text: name(written), near: name(digits) };
    return problem('number-malformed--letters', span, holes, { fixes: [write(digits, span)] });
  }
  const value = numberWords.indexOf(term.text.toLowerCase());
  if (value < 0 || !expects(s, 'quantity')) return undefined;
  const holes = { text: name(term.text), near: name(String(value)) };
  return problem('number-malformed--words', span, holes, { fixes: [write(String(value), span)] });
};

/** `in 24`: the unit before its number. */
const unitFirst: Slip = (s, term) => {
  const after = s.line.terms[s.stop.at + 1];
  if (!expects(s, 'quantity') || after?.kind !== 'number' || !findUnit(term.text)) return undefined;
  const span = { start: term.start, end: after.end };
  const near = `${after.text} ${term.text}`;
  return problem('number-malformed--unit-first', span, { near: name(near) }, { fixes: [write(near, span)] });
};

const fuzzy =
  /^(?:about|approx|approximately|around|circa|ca|roughly|over|under|max|min|maximum|minimum|some)$/i;

/** `about 18,000 lb`, `between 16,000 and 20,000 lb` */
const notExact: Slip = (s, term) => {
  const [first, and, second] = s.line.terms.slice(s.stop.at + 1, s.stop.at + 4);
  if (!expects(s, 'quantity') || first?.kind !== 'number') return undefined;
  const range = and?.text === 'and' && second?.kind === 'number';
  if (term.text.toLowerCase() === 'between' && range) {
    const near = `${first.text} to ${second.text}`;
    const span = { start: term.start, end: second.end };
    return problem(
      'number-malformed--about',
      span,
      { text: name(term.text), example: name(near) },
      { fixes: [write(near, span)] },
    );
  }
  if (!fuzzy.test(term.text)) return undefined;
  const holes = { text: name(term.text), example: name('16,000 to 20,000 lb, 18,000 lb ± 10 %') };
  return problem('number-malformed--about', spanOf(term), holes);
};

/** `rail joists`, `A B`, `S1 plus S2`: items of a list without a comma. */
const listComma: Slip = (s, term) => {
  if (!s.stop.expected.some((e) => e.kind === 'symbol' && e.symbol === ',')) return undefined;
  const before = s.line.terms[s.stop.at - 1];
  const after = s.line.terms[s.stop.at + 1];
  const known = (t: Term | undefined) =>
    t?.kind === 'word' &&
    (s.scope.findAny(t.text) !== undefined || s.scope.part(undefined, t.text) !== undefined);
  if (/^(?:and|plus|y|\+|\/)$/.test(term.text) && after?.kind === 'word' && before) {
    const gap = { start: before.end, end: term.end };
    const space = after.start === term.end ? ', ' : ',';
    const fix = replace(problemMessage('word-unexpected--comma', {}), gap, space);
    return problem(
      'strange-character--comma',
      spanOf(term),
      { character: name(term.text) },
      { fixes: [fix] },
    );
  }
  return known(term) && before && before.text !== 'and' ? commaMissing(before, term) : undefined;
};

const commaMissing = (before: Term, term: Term): LanguageProblem => {
  const near = `${before.text}, ${term.text}`;
  const at = { start: before.end, end: before.end };
  const fix = replace(problemMessage('comma-missing--fix', {}), at, ',');
  return problem(
    'comma-missing',
    spanOf(term),
    { text: name(term.text), near: name(near) },
    { fixes: [fix] },
  );
};

/** `captures rail joists`: read as the joists of a vehicle named rail. */
export function partsWithoutComma(
  line: DraftLine,
  p: LanguageProblem,
  scope: NameScope,
): LanguageProblem | undefined {
  if (p.code !== 'unknown-name' || !p.about?.includes('vehicle')) return undefined;
  const at = line.terms.findIndex((t) => t.start === p.span.start);
  const [first, second] = [line.terms[at], line.terms[at + 1]];
  if (!first || second?.kind !== 'word') return undefined;
  const parts = scope.part(undefined, first.text) && scope.part(undefined, second.text);
  return parts && commaMissing(first, second);
}

/** `cargo paper rolls, banded`: a text without its quotes. */
const unquotedText: Slip = (s, term) => {
  if (!expects(s, 'text') || term.kind !== 'word') return undefined;
  const rest = s.line.terms.slice(s.stop.at);
  const number = expects(s, 'quantity') ? rest.findIndex((t) => t.kind === 'number') : -1;
  const last = number < 0 ? rest.at(-1) : rest[number - 1];
  if (!last || (expects(s, 'quantity') && number < 0)) return undefined;
  const span = { start: term.start, end: last.end };
  const written = s.text.slice(span.start, span.end);
  const near = `"${written.replaceAll('"', '')}"`;
  const fix = replace(problemMessage('text-unquoted--fix', {}), span, near);
  return problem('text-unquoted', span, { text: name(written), near: name(near) }, { fixes: [fix] });
};

/** `crew of 4` */
const filler: Slip = (s, term) => {
  const [before, after] = [s.line.terms[s.stop.at - 1], s.line.terms[s.stop.at + 1]];
  if (!/^(?:of|the|a|an|is|are|equals)$/.test(term.text) || !before || !after) return undefined;
  const near = `${before.text} ${after.text}`;
  const fix = replace(
    problemMessage('word-unexpected--drop', { text: name(term.text) }),
    { start: before.end, end: term.end },
    '',
  );
  return problem(
    'word-unexpected--filler',
    spanOf(term),
    { text: name(term.text), near: name(near) },
    { fixes: [fix] },
  );
};

/** `at reech`: the name of a value, misspelled. */
const misnamed: Slip = (s, term) => {
  if (!expects(s, 'quantity') || term.kind !== 'word') return undefined;
  if (renamedAt([term], 0, 'words', (now) => wordsExpected(s).includes(now))) return undefined;
  const values = s.scope.names(['value', 'parameter']).map((d) => d.name);
  const near = closest(term.text, values);
  if (near === undefined || closest(term.text, wordsExpected(s)) !== undefined) return undefined;
  const fix = replace(problemMessage('unknown-name--fix', { near: name(near) }), term, near);
  return problem(
    'word-unexpected--near',
    spanOf(term),
    { text: name(term.text), near: name(near) },
    { fixes: [fix] },
  );
};

/** `driver side 3 ft` the other way around: `3 ft driver side`. */
const sideAfter: Slip = (s, term) => {
  if (term.kind !== 'number' || !wordsExpected(s).includes('driver side')) return undefined;
  const at = s.line.terms.findIndex(
    (t, i) => i > s.stop.at && /^(?:driver|passenger)$/.test(t.text) && s.line.terms[i + 1]?.text === 'side',
  );
  const [side, last, word] = [s.line.terms[at], s.line.terms[at - 1], s.line.terms[at + 1]];
  if (!side || !last || !word) return undefined;
  const span = { start: term.start, end: word.end };
  const near = `${side.text} side ${s.text.slice(term.start, last.end)}`;
  return problem(
    'word-unexpected--near',
    span,
    {
      text: name(s.text.slice(span.start, span.end)),
      near: name(near),
    },
    { fixes: [replace(problemMessage('word-unexpected--fix', { near: name(near) }), span, near)] },
  );
};

/** `Fir 4x4`: a name with a space in it. */
const splitName: Slip = (s, term) => {
  const before = s.line.terms[s.stop.at - 1];
  if (before?.kind !== 'word' || (term.kind !== 'size' && term.kind !== 'number')) return undefined;
  const near = `${before.text}${term.text}`;
  if (!s.scope.findAny(near)) return undefined;
  const span = { start: before.start, end: term.end };
  return problem(
    'name-spaces',
    span,
    { text: name(`${before.text} ${term.text}`), near: name(near) },
    { fixes: [write(near, span)] },
  );
};

/** `courses 11 checked twice`, `courses 11 (checked)`: words after the end. */
const remark: Slip = (s, term) => {
  if (!expects(s, 'end') || wordsExpected(s).length > 0) return undefined;
  // Nothing that says how much or how far is ever offered to be left out.
  if (s.line.terms.slice(s.stop.at).some((t) => t.kind === 'number' || t.kind === 'size')) return undefined;
  const words = term.kind === 'word' || (term.text === '(' && s.line.terms[s.stop.at + 1]?.kind === 'word');
  if (!words) return undefined;
  const at = { start: term.start, end: term.start };
  const span = { start: term.start, end: s.line.span.end };
  const fix = replace(problemMessage('word-unexpected--remark-fix', {}), at, '// ');
  return problem(
    'word-unexpected--remark',
    term.text === '(' ? span : spanOf(term),
    {
      text: name(term.text === '(' ? s.text.slice(span.start, span.end) : term.text),
      example: name(s.line.schema.example),
    },
    { fixes: [fix] },
  );
};

const slips: readonly Slip[] = [
  splitName,
  joined,
  between,
  notDigits,
  unitFirst,
  notExact,
  listComma,
  sideAfter,
  unquotedText,
  misnamed,
  filler,
  remark,
];

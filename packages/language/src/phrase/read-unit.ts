import { name } from '@cribwright/messages';
import type { Span, Term } from '@cribwright/syntax/internal';
import { findUnit, quote, suggestUnit, type Unit } from '@cribwright/units';
import type { MatchedSpan } from '../bound/bound-file.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { dueOf, exampleOf } from './dimension-words.js';
import { figureWords, type WrittenUnit } from './expression.js';
import type { ExpressionRequest } from './expression-request.js';
import { markAt } from './marks.js';

/** The unit after a number, how many terms it takes, and what is wrong with it. */
export interface ReadUnit {
  readonly unit: WrittenUnit | undefined;
  readonly length: number;
  readonly problems: readonly LanguageProblem[];
  readonly pieces: readonly MatchedSpan[];
}

const none: ReadUnit = { unit: undefined, length: 0, problems: [], pieces: [] };

/** Reads the unit that follows a number: `ft`, `lb per in`, `kN/m`, `%`. Nothing where none follows. */
export function readUnit(request: ExpressionRequest, at: number, after: Span): ReadUnit {
  const { terms, reserved, rule } = request;
  const first = terms[at];
  if (!first) return none;
  const thousands = thousandsOf(request, at, after);
  if (thousands) return thousands;
  const runOn = rule.dimensions.includes('area') ? undefined : feetRunOn(request, first, after);
  if (runOn) return runOn;
  for (const length of [3, 2, 1]) {
    const run = terms.slice(at, at + length);
    const last = run.at(-1);
    const text = run.length === length ? unitText(run) : undefined;
    const unit = text === undefined ? undefined : findUnit(text);
    if (!unit || text === undefined || !last) continue;
    // `in` may be a word of the line as well as a unit: it is a unit where one of its kind is due.
    if (length === 1 && reserved.has(text) && !rule.dimensions.includes(unit.dimension)) continue;
    return took(unit, text, { start: first.start, end: last.end }, length, []);
  }
  const mark = markAt(terms, at, after);
  const markUnit = mark && findUnit(mark.unit);
  if (mark && markUnit) {
    const span = { start: first.start, end: terms[at + mark.length - 1]?.end ?? first.end };
    return took(markUnit, mark.unit, span, mark.length, []);
  }
  return unknownUnit(request, first);
}

function unitText(run: readonly Term[]): string | undefined {
  const [a, b, c] = run;
  if (!a) return undefined;
  if (run.length === 1) return a.kind === 'word' || a.text === '%' || a.text === '°' ? a.text : undefined;
  if (b && c && a.kind === 'word' && b.text === 'per' && c.kind === 'word') return `${a.text}/${c.text}`;
  if (run.every((t) => t.kind === 'word')) return run.map((t) => t.text).join(' ');
  const touch = b && c && a.end === b.start && b.end === c.start;
  return touch && a.kind === 'word' && b.text === '/' && c.kind === 'word'
    ? `${a.text}/${c.text}`
    : undefined;
}

const took = (
  unit: Unit,
  text: string,
  span: Span,
  length: number,
  problems: readonly LanguageProblem[],
): ReadUnit => ({
  unit: { unit, text, span },
  length,
  problems,
  pieces: [{ span, kind: 'unit', slot: undefined, dimension: unit.dimension }],
});

/** `40k lb`: the k is no unit of its own where a unit of weight follows. */
function thousandsOf(request: ExpressionRequest, at: number, after: Span): ReadUnit | undefined {
  const [k, word] = request.terms.slice(at, at + 2);
  const unit = word?.kind === 'word' ? findUnit(word.text) : undefined;
  if (!k || !/^k$/i.test(k.text) || k.start !== after.end) return undefined;
  if (!word || (unit?.dimension !== 'force' && unit?.dimension !== 'mass'))
    return thousandsAlone(request, k, after);
  const written = textOf(request, after);
  const near = `${/^\d{1,3}$/.test(written) ? `${written},000` : `${written} × 1,000`} ${word.text}`;
  const span = { start: after.start, end: word.end };
  const fixes = near.includes('×')
    ? []
    : [replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near)];
  return took(unit, word.text, word, 2, [
    problem(
      'number-malformed--thousand',
      span,
      { text: name(quote(`${written}k ${word.text}`)), near: name(near) },
      { fixes },
    ),
  ]);
}

/** `40K`: the unit is missing as well. Pounds are most likely meant. */
function thousandsAlone(request: ExpressionRequest, k: Term, after: Span): ReadUnit | undefined {
  const lb = request.rule.dimensions.includes('force') ? findUnit('lb') : undefined;
  const written = textOf(request, after);
  if (!lb || !/^\d{1,3}$/.test(written)) return undefined;
  const near = `${written},000 lb`;
  const span = { start: after.start, end: k.end };
  const fixes = [replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near)];
  const text = name(quote(`${written}${k.text}`));
  return took(lb, k.text, k, 1, [
    problem('number-malformed--thousand', span, { text, near: name(near) }, { fixes }),
  ]);
}

/** `3ft2in`, `3ft2`: feet and inches without a gap. */
const runTogether = /^(?:ft|feet|foot)(\d+(?:\.\d+)?)(?:in|inch|inches)?$/i;

function feetRunOn(request: ExpressionRequest, word: Term, after: Span): ReadUnit | undefined {
  const inches =
    word.kind === 'word' && word.start === after.end ? runTogether.exec(word.text)?.[1] : undefined;
  const feet = findUnit('ft');
  if (inches === undefined || !feet) return undefined;
  const near = `${textOf(request, after)} ft ${inches} in`;
  const span = { start: after.start, end: word.end };
  const fixes = [replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near)];
  return took(feet, word.text, word, 1, [problem('feet-mark', span, { near: name(near) }, { fixes })]);
}

function unknownUnit({ rule, reserved, scope }: ExpressionRequest, term: Term): ReadUnit {
  const { text } = term;
  if (term.kind !== 'word' || reserved.has(text) || figureWords.some((f) => f === text)) return none;
  if (scope.findAny(text)) return none;
  const near = unitInOtherWords(text) ?? suggestUnit(text, rule.dimensions[0]) ?? suggestUnit(text);
  const measured = rule.dimensions.some((d) => d !== 'count' && d !== 'ratio');
  if (near === undefined && !measured) return none;
  const unit = near === undefined ? undefined : findUnit(near);
  const found =
    near === undefined
      ? problem('unit-unknown', term, {
          text: name(text),
          due: dueOf(rule.dimensions),
          example: name(exampleOf(rule.dimensions)),
        })
      : problem(
          'unit-unknown--near',
          term,
          { text: name(text), near: name(near) },
          { fixes: [replace(problemMessage('unit-unknown--fix', { near: name(near) }), term, near)] },
        );
  return {
    unit: unit && { unit, text, span: term },
    length: 1,
    problems: [found],
    pieces: [{ span: term, kind: 'unit', slot: undefined }],
  };
}

const otherUnits: Readonly<Record<string, string>> = {
  pulgada: 'in',
  pulgadas: 'in',
  pie: 'ft',
  pies: 'ft',
  libra: 'lb',
  libras: 'lb',
  kilo: 'kg',
  kilos: 'kg',
  metro: 'm',
  metros: 'm',
  grado: 'deg',
  grados: 'deg',
  minuto: 'min',
  minutos: 'min',
  pct: '%',
  percent: '%',
  degress: 'degrees',
};

/** The unit that a word of another language, or a common short form, stands for. */
const unitInOtherWords = (text: string): string | undefined => otherUnits[text.toLowerCase()];

const textOf = ({ terms }: ExpressionRequest, span: Span): string =>
  terms
    .filter((t) => t.start >= span.start && t.end <= span.end)
    .map((t) => t.text)
    .join('');

import { compound, mayFollow, type QuantityPart } from './compound.js';
import { type Dimension, describe } from './dimension.js';
import { findUnit, suggestUnit } from './find-unit.js';
import { across } from './gravity.js';
import { numberPattern, parseNumber, quote } from './parse-number.js';
import { fine, type QuantityProblem, type Reading, wrong } from './problem.js';
import { type Quantity, quantity } from './quantity.js';
import { usualUnit } from './system.js';
import type { Unit } from './unit.js';

export type { QuantityProblem, Reading } from './problem.js';

const unitPattern =
  /^(?:[%°"″'′]|(?:sq|cu|per) \p{L}+|\p{L}+[23²³]?(?:[/·-]\p{L}+[23²³]?| (?:ft|in|m)(?![\p{L}\d/]))?)/u;

/**
 * Reads one quantity from text: `24 in`, `3 ft 4 in`, `3'4"`, `36,000 lb`, `3 1/2 in`, `12 %`. Never throws.
 *
 * Where `wanted` is given the quantity must have that dimension; a mass is taken as a weight (and a density as a
 * weight for each volume) at standard gravity. A bare number is right only for a ratio or a count.
 */
export function readQuantity(text: string, wanted?: Dimension): Reading<Quantity> {
  const parts: QuantityPart[] = [];
  let at = skip(text, 0);
  while (at < text.length) {
    const number = numberPattern.exec(text.slice(at))?.[0];
    if (number === undefined) break;
    const value = parseNumber(number);
    if (!value.ok) return wrong(moved(value.problem, text, at, number.length));
    const unitAt = skip(text, at + number.length);
    const read = readUnit(text, unitAt, parts.at(-1)?.unit);
    if (read === undefined) return bare(text, value.value, at, unitAt, parts.length > 0, wanted);
    if (read.unit === undefined) return unknownUnit(text, read.word, unitAt, wanted);
    parts.push({ number: value.value, unit: read.unit, from: at, to: unitAt + read.word.length });
    at = skip(text, unitAt + read.word.length);
  }
  if (at < text.length || parts.length === 0) {
    const id = parts.length === 0 ? 'number-missing' : 'text-after';
    const rest = text.slice(at).trim();
    const message =
      rest === ''
        ? `a number is missing; write ${example(wanted)}`
        : parts.length === 0
          ? `${quote(rest)} does not start with a number; write ${example(wanted)}`
          : `${quote(rest)} after the quantity has no meaning here`;
    return wrong({ id, from: at, to: text.length, text: message });
  }
  const whole = compound(parts);
  return whole.ok ? fit(whole.value, wanted, text) : whole;
}

/** A number's problem, seen from the whole text. */
const moved = (problem: QuantityProblem, text: string, at: number, size: number): QuantityProblem => ({
  ...problem,
  from: at,
  to: at + size,
  ...(problem.fix === undefined ? {} : { fix: text.slice(0, at) + problem.fix + text.slice(at + size) }),
});

const skip = (text: string, at: number): number => at + (/^\s*/.exec(text.slice(at))?.[0].length ?? 0);

/** The unit at a place: its longest spelling that is known, else the word that stands there. */
function readUnit(text: string, at: number, before: Unit | undefined) {
  const word = unitPattern.exec(text.slice(at))?.[0];
  if (word === undefined) return undefined;
  const found = findUnit(word);
  if (found !== undefined) return { word, unit: found };
  // `lb ft` is one unit, `3 ft in` is not: fall back to the first word alone.
  const short = /^\p{L}+[23²³]?/u.exec(word)?.[0] ?? word;
  const alone = findUnit(short);
  if (alone !== undefined && (before === undefined || mayFollow(before, alone)) && short !== word) {
    return word[short.length] === ' ' ? { word: short, unit: alone } : { word, unit: undefined };
  }
  return { word, unit: undefined };
}

function bare(
  text: string,
  value: number,
  at: number,
  end: number,
  inCompound: boolean,
  wanted: Dimension | undefined,
): Reading<Quantity> {
  const rest = text.slice(end).trim();
  if (rest !== '') {
    return wrong({ id: 'text-after', from: end, to: text.length, text: `${quote(rest)} is not a unit` });
  }
  if (!inCompound && (wanted === undefined || wanted === 'ratio' || wanted === 'count')) {
    if (wanted === 'count' && !Number.isInteger(value)) {
      return wrong({ id: 'number-malformed', from: at, to: end, text: 'a count must be a whole number' });
    }
    return fine({ value, dimension: wanted ?? 'ratio' });
  }
  const written = text.slice(at, end).trim();
  const unit = wanted === undefined ? '' : usualUnit(wanted, 'us');
  return wrong({
    id: 'unit-missing',
    from: at,
    to: at + written.length,
    text: unit === '' ? `${written} needs a unit` : `${written} needs a unit; write ${written} ${unit}`,
    ...(unit === '' || inCompound ? {} : { fix: `${written} ${unit}` }),
  });
}

function unknownUnit(text: string, word: string, at: number, wanted: Dimension | undefined): Reading<never> {
  const meant = suggestUnit(word, wanted) ?? suggestUnit(word);
  return wrong({
    id: 'unit-unknown',
    from: at,
    to: at + word.length,
    text:
      meant === undefined
        ? `${quote(word)} is not a unit; write ${example(wanted)}`
        : `${quote(word)} is not a unit; did you mean ${meant}?`,
    ...(meant === undefined ? {} : { fix: text.slice(0, at) + meant + text.slice(at + word.length) }),
  });
}

function fit(q: Quantity, wanted: Dimension | undefined, text: string): Reading<Quantity> {
  if (wanted === undefined) return fine(q);
  const fitting = across(q, wanted);
  if (fitting !== undefined) return fine(fitting.quantity);
  return wrong({
    id: 'dimension-wrong',
    from: 0,
    to: text.length,
    text: `${quote(text.trim())} is ${describe(q.dimension)}; this needs ${describe(wanted)}, such as ${example(wanted)}`,
  });
}

const examples: Readonly<Record<Dimension, number>> = {
  length: 24,
  force: 6000,
  mass: 900,
  angle: 60,
  ratio: 50,
  count: 4,
  pressure: 500,
  area: 49,
  volume: 50,
  duration: 5,
  density: 35,
  'unit weight': 35,
  stiffness: 2000,
  moment: 500,
};

/** A quantity of this dimension, for messages: `24 in`. */
function example(dimension: Dimension = 'length'): string {
  return quantityText(examples[dimension], usualUnit(dimension, 'us'));
}

const quantityText = (value: number, unit: string): string => (unit === '' ? `${value}` : `${value} ${unit}`);

/** A quantity from a number and the spelling of its unit; `undefined` where there is no such unit. */
export function quantityOf(number: number, spelling: string): Quantity | undefined {
  const unit = findUnit(spelling);
  return unit === undefined ? undefined : quantity(number, unit);
}

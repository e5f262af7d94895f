import { fine, type NumberFault, type Reading, wrong } from './problem.js';

/** Larger numbers than this are slips of the pen in any unit. */
const LARGEST = 1e12;

const vulgar: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** Matches a number as people write one, at the start of a text. */
export const numberPattern =
  /^[+-]?(?:(?:\d[\d,]*(?:\.\d*)?|\.\d+)(?:(?:[ \t]+|-)\d+\/\d+|\/\d+|[ \t]?[½⅓⅔¼¾⅛⅜⅝⅞])?|[½⅓⅔¼¾⅛⅜⅝⅞])/;

/**
 * Reads a number as people write one: `36,000`, `38.5`, `3 1/2`, `3-1/2`, `3½`, `-2`. Never throws.
 *
 * A comma groups three digits and is never a decimal sign: `3,5` is refused, not read as 35.
 */
export function parseNumber(text: string): Reading<number> {
  const written = text.trim();
  const from = text.length - text.trimStart().length;
  const bad = (fault: NumberFault, message: string, fix?: string) =>
    wrong({
      id: written === '' ? 'number-missing' : 'number-malformed',
      from,
      to: from + written.length,
      text: message,
      number: fault,
      ...(fix === undefined ? {} : { fix }),
    });
  if (written === '') return bad('not a number', 'a number is missing');
  const parts =
    /^(?<sign>[+-]?)(?:(?<whole>[\d,]*\.?\d*)(?:(?:[ \t]+|-)(?<top>\d+)\/(?<bottom>\d+)|\/(?<under>\d+))?[ \t]?(?<mark>[½⅓⅔¼¾⅛⅜⅝⅞]?))$/u.exec(
      written,
    )?.groups;
  if (parts === undefined || (parts.whole === '' && !parts.mark)) {
    return bad('not a number', `${quote(written)} is not a number; write digits, such as 38.5 or 3 1/2`);
  }
  const whole = parts.whole ?? '';
  if (whole === '.' || (whole.includes(',') && !/^\d{1,3}(?:,\d{3})+(?:\.\d*)?$/.test(whole))) {
    const decimal = /^\d+,\d{1,2}$/.test(whole) ? whole.replace(',', '.') : undefined;
    return decimal === undefined
      ? bad('comma', `in ${quote(written)} a comma must stand before each three digits, as in 36,000`)
      : bad(
          'decimal comma',
          `in ${quote(written)} the comma is unclear; write ${decimal}, or three digits after a comma`,
          decimal,
        );
  }
  const plain = whole === '' ? 0 : Number(whole.replaceAll(',', ''));
  const hasFraction = parts.top !== undefined || parts.mark !== '';
  if (hasFraction && whole.includes('.')) {
    return bad(
      'decimal and fraction',
      `${quote(written)} has a decimal point and a fraction; write one of them`,
    );
  }
  const bottom = Number(parts.bottom ?? parts.under ?? 1);
  if (bottom === 0) return bad('zero', `${quote(written)} divides by zero`);
  if (parts.under !== undefined && parts.mark !== '') {
    return bad('two fractions', `${quote(written)} has two fractions; write one of them`);
  }
  const size =
    parts.under === undefined
      ? plain + Number(parts.top ?? 0) / bottom + (vulgar[parts.mark ?? ''] ?? 0)
      : plain / bottom;
  if (!(size <= LARGEST)) return bad('too large', `${quote(written)} is too large to be meant`);
  return fine(parts.sign === '-' && size !== 0 ? -size : size);
}

/** Text in quotes for a message, cut short so that a wild line cannot flood it. */
export const quote = (text: string): string => `“${text.length > 40 ? `${text.slice(0, 39)}…` : text}”`;

/**
 * Advance widths in thousandths of the type size, characters 32 to 126.
 * Source: Adobe Font Metrics of the base-14 fonts, Helvetica and Helvetica-Bold. Arial and Liberation Sans have
 * the same widths, so a label takes the same room in every viewer and in the PDF.
 */
const regular = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278,
  500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469,
  556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500,
  278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
] as const;

const bold = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278,
  556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584,
  556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556,
  333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
] as const;

const others: Readonly<Record<string, number>> = {
  '°': 400,
  '×': 584,
  '÷': 584,
  '−': 584,
  '≤': 549,
  '≥': 549,
  '≈': 549,
  '√': 453,
  '…': 1000,
  '•': 350,
  '′': 191,
  '″': 355,
  '→': 1000,
  '←': 1000,
  '⅛': 834,
  '⅓': 834,
  '⅜': 834,
  '⅔': 834,
  '⅝': 834,
  '⅞': 834,
  '€': 556,
  '¡': 333,
  '¿': 611,
  '±': 584,
  '½': 834,
  '¼': 834,
  '¾': 834,
  '·': 278,
  '–': 556,
  '—': 1000,
  '‘': 278,
  '’': 278,
  '“': 500,
  '”': 500,
  '²': 333,
  '³': 333,
  '§': 556,
};

export type Weight = 'normal' | 'bold';

const baseLetter = (character: string): number => character.normalize('NFD').codePointAt(0) ?? 0;

const advance = (character: string, weight: Weight): number | undefined => {
  const table = weight === 'bold' ? bold : regular;
  const code = character.codePointAt(0) ?? 0;
  return table[code - 32] ?? others[character] ?? table[baseLetter(character) - 32];
};

/** Room that a line of text takes, in the unit of `size`. Characters not in the table take a full square. */
export function textWidth(text: string, size: number, weight: Weight = 'normal'): number {
  let sum = 0;
  for (const character of text) sum += advance(character, weight) ?? 1000;
  return (sum * size) / 1000;
}

/** Whether every character is in the table: only then is the room that was worked out that of the words. */
export const measured = (text: string): boolean =>
  [...text].every((character) => advance(character, 'normal') !== undefined);

/** Height of capitals and depth below the line, in parts of the type size (the same metrics files). */
export const capHeight = 0.718;
export const descent = 0.207;

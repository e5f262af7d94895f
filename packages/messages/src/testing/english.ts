import type { Figure, Hole, Phrase } from '../values/values.js';
import { wordsIn } from '../words-in.js';

const words = wordsIn('en', 'us');

/** A message as a US reader sees it. For tests. */
export function english(m: Phrase): string;
export function english(m: Phrase | undefined): string | undefined;
export function english(m: Phrase | undefined): string | undefined {
  return m && words.message(m);
}

/** What fills a hole, as a US reader sees it. For tests. */
export const hole = (h: Hole | undefined): string | undefined =>
  h === undefined ? undefined : words.message({ kind: 'list', items: [h], join: 'plain' });

/** A figure's value as its calculation shows it, in US units. For tests. */
export const value = (f: Figure | undefined): string | undefined => f && words.value(f);

/** A figure's calculation with names and with numbers, in English and US units. For tests. */
export const calculationOf = (f: Figure | undefined) => f && words.calculation(f);

import { closest } from './closest.js';
import type { Dimension } from './dimension.js';
import type { Unit } from './unit.js';
import { units } from './units.js';

const exact = new Map<string, Unit>();
const anyCase = new Map<string, Unit | 'several'>();
for (const unit of units) {
  for (const spelling of unit.spellings) {
    exact.set(spelling, unit);
    const lower = spelling.toLowerCase();
    const other = anyCase.get(lower);
    anyCase.set(lower, other === undefined || other === unit ? unit : 'several');
  }
}

/**
 * The unit that a word names. Capitals are forgiven where they cannot change the meaning: `LB`, `kpa`.
 * The empty word names no unit.
 */
export function findUnit(word: string): Unit | undefined {
  if (word === '') return undefined;
  const found = exact.get(word) ?? anyCase.get(word.toLowerCase());
  return found === 'several' ? undefined : found;
}

/** The spelling that a mistyped unit most likely meant, among the units of one dimension or among all. */
export function suggestUnit(word: string, dimension?: Dimension): string | undefined {
  const among = units.filter((u) => u.id !== '' && (dimension === undefined || u.dimension === dimension));
  return closest(
    word,
    among.flatMap((u) => u.spellings),
  );
}

import type { Span, Term } from '@cribwright/syntax/internal';
import type { RenamedWords } from './old-words.js';
import { tradeWords } from './trade-words.js';

/** British spellings and earlier keywords. None is read; each is answered with the form to write. */
export const renamedWords: readonly RenamedWords[] = [
  { old: 'no tyre at', now: 'no tire at', at: 'line' },
  { old: 'tyres', now: 'tires', at: 'line' },
  { old: 'centre', now: 'center', at: 'line' },
  { old: 'centre', now: 'center', at: 'words' },
  { old: 'crossmembers', now: 'joists', at: 'line' },
  { old: 'way out', now: 'egress', at: 'line' },
  { old: 'foot plate', now: 'base plate', at: 'line' },
  { old: 'foot', now: 'base', at: 'line' },
  { old: 'foot', now: 'base', at: 'words' },
  { old: 'backed off', now: 'collar', at: 'words' },
  { old: 'ways both', now: 'holds both directions', at: 'line' },
  { old: 'ways', now: 'holds', at: 'line' },
  { old: 'both ways', now: 'both directions', at: 'words' },
  { old: 'both', now: 'both directions', at: 'words' },
  { old: 'people', now: 'staffing', at: 'line' },
  { old: 'units respond', now: 'responding', at: 'line' },
  { old: 'responds', now: 'responding', at: 'line' },
  { old: 'facing', now: 'opposite', at: 'words' },
  { old: 'posture', now: 'position', at: 'line' },
  { old: 'along grain', now: 'parallel to grain', at: 'line' },
  { old: 'across grain', now: 'perpendicular to grain', at: 'line' },
  { old: 'modulus along', now: 'modulus parallel', at: 'line' },
  { old: 'modulus across', now: 'modulus perpendicular', at: 'line' },
  { old: 'friction strut foot', now: 'friction strut base', at: 'line' },
  { old: 'ShortStrut', now: 'Strut3to5ft', at: 'name' },
  { old: 'LongStrut', now: 'Strut4to8ft', at: 'name' },
  { old: 'TallStrut', now: 'Strut7to12ft', at: 'name' },
];

/** All forms that are answered with the one to write. */
const answered: readonly RenamedWords[] = [...renamedWords, ...tradeWords];

/** An old form as it stands in a line, and what to write for it. */
export interface Renamed {
  readonly text: string;
  readonly now: string;
  readonly span: Span;
}

/**
 * The old form that stands at a term, the longest first, and what to write for it.
 *
 * @param fits whether the new form may stand there
 */
export function renamedAt(
  terms: readonly Term[],
  from: number,
  at: RenamedWords['at'],
  fits: (now: string) => boolean,
): Renamed | undefined {
  for (let length = 4; length > 0; length--) {
    const run = terms.slice(from, from + length);
    const [first, last] = [run[0], run.at(-1)];
    if (run.length < length || !first || !last) continue;
    const text = run.map((t) => t.text).join(' ');
    const lower = text.toLowerCase();
    const found = answered.find((w) => w.at === at && w.old === lower && fits(w.now));
    if (found) return { text, now: found.now, span: { start: first.start, end: last.end } };
  }
  return undefined;
}

/** What a name of the bundled library is called now. */
export const renamedName = (text: string): string | undefined =>
  answered.find((w) => w.at === 'name' && w.old.toLowerCase() === text.toLowerCase())?.now;

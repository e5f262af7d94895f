import type { Plan } from '@cribwright/model';
import { englishTexts } from '../../packages/messages/src/generated/texts/english.js';
import { spanishTexts } from '../../packages/messages/src/generated/texts/spanish.js';

/** Words of a text, without the quoted words of the language. */
const wordsOf = (text: string): readonly string[] =>
  text
    .replace(/`[^`\n]*`/g, ' ')
    .toLowerCase()
    .match(/\p{L}{2,}/gu) ?? [];

/** The text of a catalog without its ids and holes. The help of the command line names views by their English ids. */
const catalogWords = (catalog: string): ReadonlySet<string> =>
  new Set(
    wordsOf(
      catalog
        .replace(/^command--.*$/gm, '')
        .replace(/^[\w-]+ =/gm, '')
        .replace(/\{[^{}]*\}/g, ' '),
    ),
  );

const spanish = catalogWords(Object.values(spanishTexts()).join(''));
/** Words of the English catalog that are in no Spanish one. */
export const english = new Set(
  [...catalogWords(Object.values(englishTexts()).join(''))].filter((w) => !spanish.has(w)),
);

/** Names that the plan gives: its own, and those of what it takes from libraries. They are the same in each language. */
const named = new Set([
  'name',
  'title',
  'nominal',
  'species',
  'part',
  'item',
  'finding',
  'authority',
  'reason',
  'remark',
  'locator',
  'policy',
  'limit',
  // What the plan says of its site is printed as it is written.
  'address',
  'contacts',
  'access',
  'hazards',
  'where',
  'fleet',
  'responding',
  'otherPlans',
  'doors',
]);
function namesIn(value: unknown, key = ''): readonly string[] {
  if (typeof value === 'string') return named.has(key) ? wordsOf(value) : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => namesIn(v, Array.isArray(value) ? key : k));
}

/** English words in texts, with the text in which each stands. */
export function englishLeft(texts: readonly string[], plan: Plan): readonly string[] {
  // One of the plan's `front mounts` is its `front mount`.
  const names = new Set(namesIn(plan).flatMap((n) => [n, n.replace(/s$/, '')]));
  return [
    ...new Set(
      texts.flatMap((text) =>
        wordsOf(text)
          .filter((w) => english.has(w) && !names.has(w))
          .map((w) => `${w}: ${text}`),
      ),
    ),
  ];
}

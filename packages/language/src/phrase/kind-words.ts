import type { Kind } from '../binding/kind.js';

/** A kind of thing in the reader's words, where its own name is not that already. */
const named: Partial<Record<Kind, string>> = {
  value: 'value',
  parameter: 'value',
  tie: 'strap or chain',
  'pattern use': 'group',
  cache: 'cache (a unit that responds)',
};

export const kindWord = (kind: Kind): string => named[kind] ?? kind;

/** `a crib`, `an anchor` */
export const article = (words: string): string => `${/^[aeiou]/.test(words) ? 'an' : 'a'} ${words}`;

/** `crib, strut or step chock` */
export const kindWords = (kinds: readonly Kind[]): string => {
  const all = [...new Set(kinds.map(kindWord))];
  const last = all.pop() ?? 'thing';
  return all.length === 0 ? last : `${all.join(', ')} or ${last}`;
};

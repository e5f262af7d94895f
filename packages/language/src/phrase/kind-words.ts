import {
  type List,
  list,
  type Message,
  message,
  type Name,
  name,
  type TermId,
  term,
} from '@cribwright/messages';
import type { Kind } from '../kind/kind.js';

/** Kinds of things that have no word of the plan language, or another one. */
const named: Partial<Record<Kind, TermId>> = {
  value: 'expected.kind-value',
  parameter: 'expected.kind-value',
  tie: 'expected.kind-tie',
  'pattern use': 'expected.kind-group',
  cache: 'expected.kind-cache',
};

const kindWord = (kind: Kind): Message | Name => {
  const id = named[kind];
  return id === undefined ? name(kind) : term(id);
};

const withArticle = (first: string, what: Message | Name | List): Message =>
  message(/^[aeiou]/.test(first) ? 'expected.an' : 'expected.a', { what });

/** `crib, strut or step chock` */
export const kindWords = (kinds: readonly Kind[]): List => {
  const words = new Map(kinds.map((kind) => [named[kind] ?? kind, kindWord(kind)]));
  return list(words.size === 0 ? [term('expected.kind-thing')] : [...words.values()], 'or');
};

/** `a crib, strut or step chock` */
export const aKind = (kinds: readonly Kind[]): Message => withArticle(kinds[0] ?? 'thing', kindWords(kinds));

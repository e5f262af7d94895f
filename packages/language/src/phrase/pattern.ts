import type { Span } from '@cribwright/syntax/internal';
import type { Dimension } from '@cribwright/units';
import { inch } from '@cribwright/units';
import type { Reference } from '../bound/bound-file.js';
import type { NameLabel, TextLabel } from '../bound/label-words.js';
import type { Of, Pattern, QuantityRule } from '../bound/shape.js';
import type { Kind } from '../kind/kind.js';
import type { Expression } from './expression.js';

/** A word or text with its place. */
export interface Written {
  readonly text: string;
  readonly span: Span;
}

/** A quantity as written, with what was due there. */
export interface WrittenQuantity {
  readonly expression: Expression;
  readonly dimension: Dimension;
  /** What may be written there: a value that comes by a name is held to it once it is known. */
  readonly rule: QuantityRule;
  readonly span: Span;
}
type All<L extends readonly Pattern[]> = L extends readonly [infer First, ...infer Rest extends Pattern[]]
  ? Of<First> & All<Rest>
  : unknown;
type Slot<Name extends string, T> = { readonly [K in Name]: T };
type Some<T> = { readonly [K in keyof T]?: T[K] | undefined };

/** A fixed word, or several in a row: `driver side`. With `also`, other spellings of the same. */
export const word = (text: string, ...also: readonly string[]): Pattern => ({
  kind: 'word',
  words: [text, ...also],
});
/** A fixed word whose standing there is what counts. */
export const flag = <N extends string>(slot: N, text: string): Pattern<Slot<N, true>> => ({
  kind: 'word',
  words: [text],
  flag: slot,
});
export const symbol = (text: string): Pattern => ({ kind: 'symbol', symbol: text });
export const sequence = <const L extends readonly Pattern[]>(...items: L): Pattern<All<L>> => ({
  kind: 'sequence',
  items,
});
export const optional = <T>(item: Pattern<T>): Pattern<Some<T>> => ({
  kind: 'optional',
  item,
});
export const either = <const L extends readonly Pattern[]>(...items: L): Pattern<Some<All<L>>> => ({
  kind: 'either',
  items,
});
export const anyOrder = <const L extends readonly Pattern[]>(...items: L): Pattern<Some<All<L>>> => ({
  kind: 'any order',
  items,
});
/** One or more, with commas between. */
export const list = <N extends string, T>(slot: N, item: Pattern<T>): Pattern<Slot<N, readonly T[]>> => ({
  kind: 'list',
  slot,
  item,
});
/** Keeps what a phrase yields under one name, so that the same phrase may stand twice in a line. */
export const group = <N extends string, T>(slot: N, item: Pattern<T>): Pattern<Slot<N, T>> => ({
  kind: 'group',
  slot,
  item,
});
export const quantity = <N extends string>(
  slot: N,
  dimension: Dimension | readonly Dimension[],
  rule: Partial<Omit<QuantityRule, 'dimensions'>> = {},
): Pattern<Slot<N, WrittenQuantity>> => ({
  kind: 'quantity',
  slot,
  rule: {
    range: false,
    ...(dimension === 'length' ? { atLeast: -farthest, atMost: farthest } : {}),
    ...rule,
    dimensions: typeof dimension === 'string' ? [dimension] : dimension,
  },
});
/** In meters: what is farther off, or longer, is a slip of the pen. */
const farthest = 1000;
/** How long, wide or thick a thing is. Nothing that is there is thinner than a sixteenth of an inch. */
export const extent = <N extends string>(slot: N, rule: Partial<Omit<QuantityRule, 'dimensions'>> = {}) =>
  quantity(slot, 'length', { atLeast: inch / 16, ...rule });
/** A whole number. */
export const count = <N extends string>(slot: N, rule: { atLeast?: number; atMost?: number } = {}) =>
  quantity(slot, 'count', { atLeast: 0, ...rule });
export const choice = <N extends string, const W extends string>(
  slot: N,
  ...words: readonly W[]
): Pattern<Slot<N, Written & { readonly text: W }>> => ({ kind: 'choice', slot, words });
export const reference = <N extends string>(
  slot: N,
  ...kinds: readonly Kind[]
): Pattern<Slot<N, Reference>> => ({
  kind: 'reference',
  slot,
  kinds,
});
export const part = <N extends string>(slot: N, of?: string): Pattern<Slot<N, Reference>> => ({
  kind: 'part',
  slot,
  of,
});
export const name = <N extends string>(slot: N, label: NameLabel): Pattern<Slot<N, Written>> => ({
  kind: 'name',
  slot,
  label,
});
export const text = <N extends string>(slot: N, label: TextLabel): Pattern<Slot<N, Written>> => ({
  kind: 'text',
  slot,
  label,
});
export const date = <N extends string>(slot: N): Pattern<Slot<N, Written>> => ({ kind: 'date', slot });
export const size = <N extends string>(slot: N): Pattern<Slot<N, Written>> => ({ kind: 'size', slot });
export const rule = <N extends string>(slot: N): Pattern<Slot<N, Written>> => ({ kind: 'rule', slot });
export const expression = <N extends string>(slot: N): Pattern<Slot<N, Expression>> => ({
  kind: 'expression',
  slot,
});
export interface Argument {
  readonly name: Reference;
  readonly value: ArgumentValue;
  readonly span: Span;
}
export type ArgumentValue =
  | { readonly kind: 'quantity'; readonly expression: Expression }
  | { readonly kind: 'reference'; readonly reference: Reference; readonly part: Reference | undefined }
  | { readonly kind: 'unreadable' };
export const argumentList = <N extends string>(slot: N): Pattern<Slot<N, readonly Argument[]>> => ({
  kind: 'arguments',
  slot,
});
/** Nothing at all: the key alone says it. */
export const nothing: Pattern<Record<never, never>> = { kind: 'sequence', items: [] };

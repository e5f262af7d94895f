import { expect, it } from 'vitest';
import { lacking, lackingInText, packages } from './public-api.js';

it('has a docstring on every public export, with units, and with what it throws', () => {
  expect(packages).toContain('engine');
  expect(packages.length).toBeGreaterThanOrEqual(12);
  expect(lacking(packages)).toEqual([]);
});

it('finds what lacks a docstring, a unit, or what it throws', () => {
  const text = `
export const bare = 1;
/** Makes it longer. */
export const longer = (length: number): number => length * 2;
/** Makes it longer, m. */
export const longerInMeters = (length: number): number => length * 2;
/** A box. */
export interface Box {
  readonly name: string;
  readonly height: number | undefined;
  /** m */
  readonly width: number;
  readonly sides: readonly { readonly area: number }[];
}
/** Fails. */
export function fails(): never {
  throw new Error('always');
}
/** @throws always */
export function saysSo(): never {
  throw new Error('always');
}
`;
  expect(lackingInText(text)).toEqual([
    'fails does not state what it throws (packages/text.ts:16)',
    'bare has no docstring (packages/text.ts:2)',
    'longer states no unit of length, its result (packages/text.ts:4)',
    'Box states no unit of height (packages/text.ts:8)',
    'Box states no unit of area (packages/text.ts:8)',
  ]);
});

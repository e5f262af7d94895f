import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { symbolsOf } from './document-symbol.js';

it('shows blocks as they nest, and steps as they are written', async () => {
  const { file } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  const [plan] = symbolsOf(file);
  expect(plan?.name).toBe('plan "Trailer by the scale house"');
  expect(plan?.children?.map((c) => c.name)).toEqual(['ground', 'vehicle trailer', 'crib A', 'steps']);
  expect(plan?.children?.[1]?.detail).toBe('CountyTrailer');
  expect(plan?.children?.[3]?.children?.map((c) => c.name)).toEqual([
    '1 chock trailer both directions crew 1 takes 1 min',
    '2 build A crew 2 takes 5 min',
  ]);
});

it('keeps each selection inside its range, as the protocol asks', async () => {
  const { file } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  const check = (symbols: ReturnType<typeof symbolsOf>): void => {
    for (const { range, selectionRange, children } of symbols) {
      const inside = (a: typeof range.start, b: typeof range.start): boolean =>
        a.line < b.line || (a.line === b.line && a.character <= b.character);
      expect(inside(range.start, selectionRange.start) && inside(selectionRange.end, range.end)).toBe(true);
      check(children ?? []);
    }
  };
  check(symbolsOf(file));
});

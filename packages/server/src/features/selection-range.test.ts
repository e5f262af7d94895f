import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { spanOf } from '../context/positions.js';
import { atCursor } from '../testing/context-of.js';
import { selectionsAt } from './selection-range.js';

it('grows from a word to its value, its line, its block and the file', async () => {
  const { file, offset } = await atCursor(trailerPlan.replace('24 in long', '24 in lo<|>ng'), {
    'fleet.crib': fleet,
  });
  const texts: string[] = [];
  for (let at: ReturnType<typeof selectionsAt> | undefined = selectionsAt(file, offset); at; at = at.parent) {
    const { start, end } = spanOf(file, at.range);
    texts.push(file.text.slice(start, end).trim().split('\n')[0] ?? '');
  }
  expect(texts).toEqual([
    'long',
    'Fir4x4 24 in long',
    'timber    Fir4x4 24 in long',
    'timber    Fir4x4 24 in long',
    'crib A {',
    'ground {',
    'plan "Trailer by the scale house" {',
    'use "library/vehicles.crib"',
  ]);
});

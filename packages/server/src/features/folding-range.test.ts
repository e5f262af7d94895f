import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { foldsOf } from './folding-range.js';

it('folds blocks to their first line and closing brace, and the use lines together', async () => {
  const { file } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  const lines = trailerPlan.split('\n');
  const folds = foldsOf(file).map((f) => [lines[f.startLine], lines[f.endLine + 1], f.kind]);
  expect(folds).toContainEqual(['  crib A {', '  }', undefined]);
  expect(folds).toContainEqual(['use "library/vehicles.crib"', '', 'imports']);
});

it('folds comments that follow one another', async () => {
  const { file } = await atCursor('<|>// one\n// two\n// three\nplan "x" {} // not this\n/* a\n b */\n');
  expect(foldsOf(file).filter((f) => f.kind === 'comment')).toEqual([
    { startLine: 0, endLine: 2, kind: 'comment' },
    { startLine: 4, endLine: 5, kind: 'comment' },
  ]);
});

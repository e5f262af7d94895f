import { expect, it } from 'vitest';
import { stageAfter } from './stage-after.js';

it('steps to the next stage, and past the last one to the finished work', () => {
  expect(stageAfter(0, 1, 3)).toBe(1);
  expect(stageAfter(2, 1, 3)).toBeUndefined();
  expect(stageAfter(undefined, 1, 3)).toBeUndefined();
});

it('steps back from the finished work to the last stage, and no further than the first', () => {
  expect(stageAfter(undefined, -1, 3)).toBe(2);
  expect(stageAfter(0, -1, 3)).toBe(0);
  expect(stageAfter(undefined, -1, 0)).toBeUndefined();
});

import { english } from '@cribwright/messages/testing';
import { trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { facingWords, groundWords } from './ground-words.js';

const { ground } = trailerOnCar;

it.each([
  [{ grade: 0 }, 'asphalt, level'],
  [{ grade: 0.02 }, 'asphalt, slopes down 2 % toward the rear'],
  [{ grade: 0, unsaid: 'grade' }, 'asphalt, grade not stated'],
  [{ grade: 0.02, unsaid: 'direction' }, 'asphalt, slopes 2 %, direction not stated'],
] as const)('says of %o', (change, words) => {
  expect(english(groundWords({ ...ground, toward: 'rear', ...change }, '2 %'))).toBe(words);
});

it('names the eight points of the compass', () => {
  expect([0, 1, 4, 7].map((eighth) => english(facingWords((eighth * Math.PI) / 4)))).toEqual([
    'front faces north',
    'front faces northeast',
    'front faces south',
    'front faces northwest',
  ]);
});

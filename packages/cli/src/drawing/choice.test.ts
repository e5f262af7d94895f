import { lossTitles } from '@cribwright/drawing';
import { wordsIn } from '@cribwright/messages';
import { trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { choiceOf, themeOf } from './choice.js';

const analysis = analyze(trailerOnCar);
const choose = (asked: Parameters<typeof choiceOf>[0]) => choiceOf(asked, trailerOnCar, analysis);

it('shows the top view of the finished work unless told otherwise', () => {
  expect(choose({})).toEqual({ view: 'top', subject: undefined, stage: undefined, lost: undefined });
});

it('finds a support by the name that the plan gives it', () => {
  expect(choose({ view: 'crib', subject: 'A' })).toMatchObject({ view: 'crib', subject: 'crib/A' });
});

it.each([
  [{ view: 'sidee' }, /There is no view “sidee”. Did you mean side\?/],
  [{ view: 'plan' }, /There is no view “plan”. Did you mean top\?/],
  [{ view: 'crib', subject: 'Z' }, /There is no support “Z”.* There are: A, B, C, D, C1, C2\./],
  [{ stage: '99' }, /There is no stage 99/],
  [{ stage: 'x' }, /There is no stage x/],
])('says what could be said instead: %o', (asked, words) => {
  expect(() => choose(asked)).toThrow(words);
});

it('takes a theme with spaces or dashes', () => {
  expect(themeOf('high-contrast')).toBe('high contrast');
  expect(() => themeOf('pink')).toThrow(/There is no theme/);
});

it('finds a loss by its title in English and in the language of the drawing', () => {
  const spanish = wordsIn('es', 'us');
  const lost = lossTitles(trailerOnCar, analysis, undefined, spanish);
  const inEnglish = lossTitles(trailerOnCar, analysis);
  expect(lost.length).toBeGreaterThan(3);
  lost.forEach(({ id, title }, i) => {
    expect(title).not.toBe(inEnglish[i]?.title);
    for (const word of [title, inEnglish[i]?.title ?? ''])
      expect(choiceOf({ lost: word }, trailerOnCar, analysis, spanish).lost).toBe(id);
  });
});

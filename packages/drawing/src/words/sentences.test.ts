import { expect, it } from 'vitest';
import { sentences } from './sentences.js';

it('ends each as a sentence, once, and leaves out what is empty', () => {
  expect(sentences(['Plan from above', '', 'crib A, 49 in high.', 'Is it level?'])).toBe(
    'Plan from above. crib A, 49 in high. Is it level?',
  );
});

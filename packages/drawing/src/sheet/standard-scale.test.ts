import { expect, it } from 'vitest';
import { standardScale } from './standard-scale.js';

it('takes the largest scale that fits both ways', () => {
  const scale = standardScale({ across: 16.15, down: 4 }, { across: 180, down: 100 }, 'us');
  expect(scale.words).toBe('1/8 in = 1 ft (1 : 96)');
  expect(16.15 * scale.perMeter).toBeLessThanOrEqual(180);
  expect(standardScale({ across: 16.15, down: 4 }, { across: 180, down: 100 }, 'si').ratio).toBe(100);
});

// One foot is 12 in: 1/8 in on the sheet for 1 ft is 1 to 96.
it.each([
  ['1/2 in = 1 ft', 24],
  ['1/4 in = 1 ft', 48],
  ['3/16 in = 1 ft', 64],
  ['1/16 in = 1 ft', 192],
])('%s is 1 to %d', (words, ratio) => {
  const [top, bottom] = (words.split(' ')[0] ?? '').split('/').map(Number);
  expect((12 * (bottom ?? 1)) / (top ?? 1)).toBe(ratio);
  expect(standardScale({ across: ratio / 1000, down: 0 }, { across: 1, down: 1 }, 'us').words).toContain(
    words,
  );
});

it('still has a scale for a site that no rule covers', () => {
  const scale = standardScale({ across: 5_000_000, down: 10 }, { across: 200, down: 100 }, 'si');
  expect(5_000_000 * scale.perMeter).toBeLessThanOrEqual(200 + 1e-9);
});

import { expect, it } from 'vitest';
import { colored, paintFor, plain, printable } from './paint.js';

it('colors on a terminal and stays plain in a pipe', () => {
  expect(paintFor({ isTTY: true }, {})).toBe(colored);
  expect(paintFor({}, {})).toBe(plain);
  expect(colored('danger', 'x')).toBe('\u001b[1m\u001b[31mx\u001b[39m\u001b[22m');
});

it('hears NO_COLOR before FORCE_COLOR', () => {
  expect(paintFor({ isTTY: true }, { NO_COLOR: '1', FORCE_COLOR: '1' })).toBe(plain);
  expect(paintFor({}, { FORCE_COLOR: '1' })).toBe(colored);
  expect(paintFor({ isTTY: true }, { TERM: 'dumb' })).toBe(plain);
});

it('lets no control character of a plan reach the terminal', () => {
  expect(printable('a\u001b[31mb\u0007\tc\nd')).toBe('a\\u{1b}[31mb\\u{7}\tc\nd');
  expect(printable('left\u202eright')).toBe('left\\u{202e}right');
});

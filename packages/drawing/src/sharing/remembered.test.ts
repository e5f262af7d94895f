import { expect, it } from 'vitest';
import { remembered } from './remembered.js';

it('gives the same answer again as long as it comes from the same things', () => {
  const ask = remembered<object, { readonly n: number }>();
  let made = 0;
  const make = () => ({ n: ++made });
  const [one, other] = [{}, {}];
  const first = ask(one, [1, 'a', one], make);
  expect(ask(one, [1, 'a', one], make)).toBe(first);
  expect(ask(other, [1, 'a', one], make)).not.toBe(first);
  expect(ask(one, [1, 'a', other], make)).not.toBe(first);
  expect(ask(one, [1, 'a'], make)).not.toBe(first);
  expect(made).toBe(4);
});

it('remembers that there was no answer', () => {
  const ask = remembered<object, undefined>();
  let made = 0;
  const key = {};
  for (let i = 0; i < 3; i++) ask(key, [], () => void made++);
  expect(made).toBe(1);
});

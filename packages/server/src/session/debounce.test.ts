import { expect, it } from 'vitest';
import { debounce, type Turn } from './debounce.js';

/** An event loop that is turned by hand. */
function loop() {
  const queue: (() => void)[] = [];
  const turn: Turn = (run) => queue.push(run);
  const step = () => {
    for (const run of queue.splice(0)) run();
  };
  return { turn, step, waiting: () => queue.length };
}

it('answers one edit once, without waiting for the clock', () => {
  const { turn, step, waiting } = loop();
  let runs = 0;
  debounce(turn, () => runs++).trigger();
  while (waiting()) step();
  expect(runs).toBe(1);
});

it('answers a burst of a thousand edits once, after the last', () => {
  const { turn, step, waiting } = loop();
  let runs = 0;
  const calm = debounce(turn, () => runs++);
  for (let i = 0; i < 1000; i++) {
    calm.trigger();
    step();
    expect(runs).toBe(0);
  }
  while (waiting()) step();
  expect(runs).toBe(1);
});

it('starts again for an edit that comes after the answer', () => {
  const { turn, step, waiting } = loop();
  let runs = 0;
  const calm = debounce(turn, () => runs++);
  calm.trigger();
  while (waiting()) step();
  calm.trigger();
  while (waiting()) step();
  expect(runs).toBe(2);
});

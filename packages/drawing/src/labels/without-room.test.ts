import { wordsIn } from '@cribwright/messages';
import { crib, planOf, vanTrailer } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';
import { sayIn } from '../text/say.js';
import { withoutRoom } from './without-room.js';

it('takes no room where every label has found its place', () => {
  expect(withoutRoom([], 50, sayIn(wordsIn('en', 'us')))).toEqual({ items: [], bottom: 50 });
});

it('lists every label of a crowded plan that has none, so that no crib goes unnamed', () => {
  const cribs = Array.from({ length: 160 }, (_, i) =>
    crib(`N${i}`, 1 + (i % 40) * 0.35, -1.1 + Math.floor(i / 40) * 0.7),
  );
  const plan = planOf({ vehicles: [vanTrailer], cribs });
  const view = drawn(plan, { ...analyze(planOf({})), supports: [] }, { view: 'top' });
  const listed = view.words('labels without room').join(' ');
  const placed = new Set(view.groups.filter((g) => g.key.startsWith('label ')).map((g) => g.key));
  for (const c of cribs)
    expect(
      placed.has(`label ${c.id}`) || listed.includes(`${c.name};`) || listed.includes(`${c.name}.`),
    ).toBe(true);
  expect(listed).toContain('No room beside the shape');
});

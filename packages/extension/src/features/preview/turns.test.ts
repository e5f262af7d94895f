import { unchecked } from '@cribwright/engine';
import { tallCrib, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { firstLook, showMessage } from './show-message.js';
import { Turns } from './turns.js';

const message = (uri: string, plan = trailerOnCar) =>
  showMessage(
    {
      uri,
      version: 1,
      plans: [{ plan, analysis: unchecked(plan), places: {}, partial: false, unread: [] }],
      errors: false,
      stale: undefined,
      pending: true,
    },
    firstLook,
    undefined,
  );
const kinds = (show: ReturnType<Turns['next']>) => show.scenes.flatMap((s) => s.items.map((i) => i.kind));

it('sends a drawing whole first, and then only what changed', () => {
  const turns = new Turns();
  const first = turns.next(message('file:///a.crib'));
  expect(first.after).toBeUndefined();
  expect(kinds(first)).not.toContain('kept');
  const second = turns.next(message('file:///a.crib'));
  expect(second.after).toBe(first.turn);
  expect(new Set(kinds(second))).toEqual(new Set(['kept']));
  const third = turns.next(message('file:///a.crib', tallCrib));
  expect(third.after).toBe(second.turn);
  expect(kinds(third)).toContain('group');
});

it('sends it whole to a page that has nothing, and for another file', () => {
  const turns = new Turns();
  turns.next(message('file:///a.crib'));
  expect(kinds(turns.next(message('file:///b.crib')))).not.toContain('kept');
  turns.forget();
  expect(kinds(turns.next(message('file:///b.crib')))).not.toContain('kept');
});

it('leaves out nothing after a message that drew nothing', () => {
  const turns = new Turns();
  const first = turns.next(message('file:///a.crib'));
  const empty = turns.next({ ...message('file:///a.crib'), scenes: [] });
  expect(empty.turn).toBeUndefined();
  expect(turns.next(message('file:///a.crib')).after).toBe(first.turn);
});

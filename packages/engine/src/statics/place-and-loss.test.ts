import { describe, expect, it } from 'vitest';
import { lose } from './loss.js';
import { place } from './place.js';
import { settle } from './settle.js';
import { start } from './state.js';
import {
  at,
  atRest,
  block,
  body,
  carriedBy,
  contact,
  foot,
  footContact,
  outcomeOf,
  sceneOf,
} from './testing/sample-scenes.js';
import { rakedPairs } from './testing/worked-scenes.js';

const W = 1e5;

describe('placing', () => {
  const scene = sceneOf({
    ...block({ length: 4, width: 2, height: 2 }, 0.4),
    contacts: [
      ...block({ length: 4, width: 2, height: 2 }, 0.4).contacts,
      contact('crib', at(2, 0, 0), { preload: 500 }),
    ],
  });
  it('leaves alone what is there already, and what was not named', () => {
    const first = atRest(scene, start(scene, ['crib'])).state;
    expect(place(scene, first, [])).toEqual(first);
    const placed = place(scene, first, ['crib']);
    expect(place(scene, placed, ['crib'])).toEqual(placed);
    expect(placed.contacts.slice(0, 4)).toEqual(first.contacts.slice(0, 4));
  });
  it('does not bring back what is lost', () => {
    const lost = lose(scene, start(scene), ['crib']);
    expect(place(scene, lost, ['crib'])).toEqual(lost);
  });
  it('changes nothing at rest but the preload', () => {
    const first = atRest(scene, start(scene, ['crib']));
    const built = atRest(scene, place(scene, first.state, ['crib']));
    expect(carriedBy(built.forces, 'crib')).toBeGreaterThan(300);
    expect(carriedBy(built.forces, 'crib')).toBeLessThan(500);
  });
  it('lets what acts on something that waits wait with it', () => {
    const pairs = rakedPairs(W, 60, 0.5, true);
    const waits = start(pairs, ['foot 1 1']);
    const outcome = outcomeOf(pairs, waits);
    expect(outcome.kind).toBe('falls');
  });
});

describe('losing', () => {
  it('one thing that is not named elsewhere takes nothing along', () => {
    const scene = block({ length: 4, width: 2, height: 2 }, 0.4);
    const lost = lose(scene, start(scene), ['0 1']);
    expect(lost.contacts.map((c) => c.presence)).toEqual(['there', 'lost', 'there', 'there']);
  });
  it('a body takes what stood on it', () => {
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 2), 'upper'), body(W, at(0, 0, 0.5), 'under')],
      contacts: [
        contact('on ground', at(0, 0, 0), { upper: { kind: 'body', id: 'under' } }),
        contact('between', at(0, 0, 1), {
          upper: { kind: 'body', id: 'upper' },
          lower: { kind: 'body', id: 'under' },
        }),
      ],
    });
    const lost = lose(scene, start(scene), ['under']);
    expect(lost.contacts.map((c) => c.presence)).toEqual(['lost', 'lost']);
    expect(lost.bodies.map((b) => b.presence)).toEqual(['there', 'lost']);
  });
  it('does not change the state that it was given', () => {
    const scene = block({ length: 4, width: 2, height: 2 }, 0.4);
    const before = start(scene);
    const copy = JSON.stringify(before);
    lose(scene, before, ['0 1']);
    const given = settle(scene, before);
    while (given.next().done !== true);
    expect(JSON.stringify(before)).toBe(copy);
  });
});

describe('a foot that nothing holds', () => {
  it('is taken out, said, and the rest goes on', () => {
    const plain = block({ length: 4, width: 2, height: 2 }, 0.4);
    const scene = {
      ...plain,
      feet: [foot('loose', at(2, 3, 0), 100)],
      contacts: [...plain.contacts, footContact('loose', at(2, 3, 0), 0.05)],
      gravity: at(-Math.sin(0.1), 0, -Math.cos(0.1)),
    };
    const outcome = atRest(scene);
    expect(outcome.feetGone).toEqual(['loose']);
    expect(outcome.state.feet[0]?.presence).toBe('lost');
  });
});

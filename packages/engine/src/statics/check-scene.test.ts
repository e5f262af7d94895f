import { describe, expect, it } from 'vitest';
import { inOneGo } from '../stepwise/stepwise.js';
import { problemsOf } from './check-scene.js';
import { push } from './push.js';
import type { Scene } from './scene.js';
import { start } from './state.js';
import { at, block, contact, end, ground, onBody, outcomeOf, tie } from './testing/sample-scenes.js';

const good = block({ length: 4, width: 2, height: 2 }, 0.4);
const also = (parts: Partial<Scene>): Scene => ({ ...good, ...parts });

describe('a scene that cannot be asked', () => {
  it('has no problem where there is none', () => expect(problemsOf(good)).toEqual([]));
  it.each<[string, Scene, object]>([
    [
      'an id twice',
      also({ contacts: [...good.contacts, contact('body', at(0, 0, 0))] }),
      { kind: 'same id twice', id: 'body' },
    ],
    [
      'something that is not there',
      also({ contacts: [...good.contacts, contact('c', at(0, 0, 0), { upper: onBody('trailer') })] }),
      { kind: 'acts on nothing', id: 'c', on: 'trailer' },
    ],
    [
      'a weight that is not a number',
      also({ bodies: [{ id: 'body', weight: Number.NaN, center: at(0, 0, 0) }] }),
      { kind: 'not a number', id: 'body', property: 'weight' },
    ],
    [
      'no weight',
      also({ bodies: [{ id: 'body', weight: 0, center: at(0, 0, 0) }] }),
      { kind: 'must be above zero', id: 'body', property: 'weight' },
    ],
    [
      'friction below zero',
      also({ contacts: [...good.contacts, contact('c', at(0, 0, 0), { friction: -0.1 })] }),
      { kind: 'must not be below zero', id: 'c', property: 'friction' },
    ],
    [
      'a slanting normal that is too long',
      also({ contacts: [...good.contacts, contact('c', at(0, 0, 0), { normal: at(0, 1, 1) })] }),
      { kind: 'must have length 1', id: 'c', property: 'normal' },
    ],
    [
      'a tie of no length',
      also({ ties: [tie('t', end(onBody(), at(1, 1, 1)), end(ground, at(1, 1, 1)))] }),
      { kind: 'has no length', id: 't' },
    ],
    [
      'a load nowhere',
      also({ loads: [{ on: onBody(), at: at(0, 0, 0), force: at(Number.POSITIVE_INFINITY, 0, 0) }] }),
      { kind: 'not a number', id: 'load 0', property: 'force' },
    ],
  ])('%s', (_, scene, problem) => {
    expect(problemsOf(scene)).toContainEqual(problem);
    const outcome = outcomeOf(scene);
    expect(outcome).toMatchObject({ kind: 'not solved', reason: { kind: 'unsound scene' } });
  });
  it('is not pushed either, nor is a body that is not there', () => {
    const of = { body: 'body', at: at(0, 0, 1), direction: at(1, 0, 0) };
    expect(inOneGo(push(also({ movementLimit: 0 }), start(good), of))).toMatchObject({ kind: 'not solved' });
    expect(inOneGo(push(good, start(good), { ...of, body: 'car' }))).toMatchObject({
      kind: 'not solved',
      reason: { kind: 'unsound scene', problems: [{ kind: 'acts on nothing', on: 'car' }] },
    });
  });
});

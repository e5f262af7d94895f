import { step } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { orderGraph } from './order-graph.js';

const graph = (...afters: (readonly number[])[]) =>
  orderGraph({
    steps: afters.map((after, i) => step(i + 1, 'build', [], { after: after.map((n) => `step/${n}`) })),
  });

describe('order of steps', () => {
  it('follows the lines where nothing else is said', () => {
    const g = graph([], [], []);
    expect(g.before('step/1', 'step/3')).toBe(true);
    expect(g.before('step/3', 'step/1')).toBe(false);
  });

  it('lets a step wait only for those it names', () => {
    const g = graph([], [], [1]);
    expect(g.before('step/1', 'step/3')).toBe(true);
    expect(g.before('step/2', 'step/3')).toBe(false);
  });

  it('finds steps that wait for each other, and leaves them out of the sequence', () => {
    const g = graph([], [3], [2], [1]);
    expect(g.circular).toEqual(['step/2', 'step/3']);
    expect(g.sequence.map((s) => s.id)).toEqual(['step/1', 'step/4']);
  });

  it('puts a step that waits for a later line behind it', () =>
    expect(graph([2], [], []).circular).toEqual(['step/1', 'step/2']));
});

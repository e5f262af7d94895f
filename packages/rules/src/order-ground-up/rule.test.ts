import { english } from '@cribwright/messages/testing';
import { hastyTrailer, step, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

describe('order-ground-up', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));

  it('wants the car held before the trailer', () => {
    const [finding] = check(rule, hastyTrailer);
    expect(finding?.at).toEqual({ element: 'step/1' });
    expect(english(finding?.message)).toContain('Step 1 stabilizes the trailer before the car below it.');
  });

  it('lets a step wait for the one that it needs', () => {
    const steps = [
      step(1, 'build', ['crib/A'], { after: ['step/2'] }),
      step(2, 'capture', ['vehicle/car'], { with: ['crib/C1'], after: ['step/3'] }),
      step(3, 'size up', []),
    ].map((s, i) => (i === 2 ? { ...s, after: ['step/none'] } : s));
    expect(check(rule, { ...trailerOnCar, steps })).toEqual([]);
  });

  it('offers to let a step wait', () => {
    const steps = [
      step(1, 'size up', []),
      step(2, 'build', ['crib/A'], { after: ['step/1'] }),
      step(3, 'build', ['crib/C1'], { after: ['step/1'] }),
    ];
    expect(check(rule, { ...trailerOnCar, steps })[0]?.fixes[0]?.edits).toEqual([
      { kind: 'set', at: { element: 'step/2', property: 'after' }, text: '3' },
    ]);
  });

  it('says so where no step holds the car', () =>
    expect(
      english(check(rule, { ...trailerOnCar, steps: [step(1, 'build', ['crib/A'])] })[0]?.message),
    ).toContain('No step stabilizes the car.'));

  it('says nothing of a plan without steps', () =>
    expect(check(rule, { ...trailerOnCar, steps: [] })).toEqual([]));
});

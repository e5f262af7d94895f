import { english } from '@cribwright/messages/testing';
import type { Plan, Step } from '@cribwright/model';
import { trailerOnCar, truckOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const withLast = (plan: Plan, more: readonly Pick<Step, 'action' | 'targets'>[]): Plan => {
  const last = plan.steps.at(-1)?.number ?? 0;
  const steps = more.map((m, i): Step => {
    const id = `step/${last + i + 1}`;
    return {
      id,
      number: last + i + 1,
      with: [],
      after: [],
      crew: undefined,
      takes: undefined,
      ref: { element: id },
      ...m,
    };
  });
  return { ...plan, steps: [...plan.steps, ...steps] };
};

describe('stage-unsafe', () => {
  it.each([trailerOnCar, truckOnCar])('passes a plan that only adds', (plan) => {
    expect(check(rule, plan)).toEqual([]);
  });

  it('warns where taking cribs away leaves a tire with nothing behind it', () => {
    const taken = withLast(truckOnCar, [
      { action: 'remove', targets: ['crib/B', 'crib/D'] },
      { action: 'build', targets: ['crib/B', 'crib/D'] },
    ]);
    const found = check(rule, taken);
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]?.severity).toBe('warning');
    expect(found[0]?.at).toEqual({ element: 'step/4' });
    expect(english(found[0]?.message)).toMatch(
      /^After this step \(step 4: remove crib B, crib D\), nothing holds .* if this support is lost: .*\. It was held before this step\.$/,
    );
  });
});

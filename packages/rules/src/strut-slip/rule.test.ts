import { english } from '@cribwright/messages/testing';
import { gripping, policyWith, strap, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const untied = { ...trailerOnCar, ties: [] };

describe('strut-slip', () => {
  it('passes bases that are tied to each other', () => expect(check(rule, trailerOnCar)).toEqual([]));

  // OpenStax University Physics 1, section 6.2: a body on an incline stays while tan(angle of slope) ≤ μ;
  // for a strut at θ to the ground the slope is 90° − θ, so it takes μ = 1 / tan θ: 38 in out, 40 in up = 0.95.
  it('works out the friction that it would take', () => {
    const [finding] = check(rule, untied);
    expect(english(finding?.message)).toContain('it needs friction of 0.95');
    expect(english(finding?.message)).toContain('The friction that counts is 0.3.');
  });

  it('lets friction hold a foot where it does', () => {
    const plan = { ...untied, ground: gripping };
    expect(check(rule, { ...plan, policy: policyWith('friction strut base', 0.95) })).toEqual([]);
    expect(check(rule, { ...plan, policy: policyWith('friction strut base', 0.949) })).toHaveLength(4);
    // Asphalt grips timber with 0.4: a foot of which the policy says 0.95 still slides on it.
    expect(check(rule, { ...untied, policy: policyWith('friction strut base', 0.95) })).toHaveLength(4);
  });

  it('does not take a strap along the truck for a hold', () => {
    const aside = { ...untied, ties: [strap('T1', 'S1', 'S3')] };
    expect(check(rule, aside).find((f) => f.subject.element === 'strut/S1')?.message.id).toBe(
      'strut-slip.tied-aside',
    );
  });

  it('does not take a strap to the head of the same strut for a hold', () => {
    const [first] = trailerOnCar.ties;
    if (first === undefined) throw new Error('the sample has no straps');
    const up = { ...first, to: { kind: 'strut head', strut: 'strut/S1' } } as const;
    expect(first.from).toEqual({ kind: 'strut base', strut: 'strut/S1' });
    // It lies along the strut: at the base and at the head it takes away just what the strut brings.
    for (const friction of [0.3, 0]) {
      const policy = policyWith('friction strut base', friction);
      const found = check(rule, { ...untied, policy, ties: [up] });
      expect(found.find((f) => f.subject.element === 'strut/S1')?.message.id).toBe('strut-slip.tied-aside');
    }
  });

  it('does not take a strap that rises steeply for a hold', () => {
    const [first] = trailerOnCar.ties;
    const s1 = trailerOnCar.struts.find((s) => s.id === 'strut/S1');
    if (first === undefined || s1 === undefined) throw new Error('the sample has no strut S1');
    const tied = (z: number) => {
      const part = { kind: 'vehicle part', vehicle: s1.head.vehicle, part: 'rail' } as const;
      const to = { ...part, x: s1.head.x, y: s1.head.y, z };
      return check(rule, { ...untied, ties: [{ ...first, to }] }).some(
        (f) => f.subject.element === 'strut/S1' && f.message.id === 'strut-slip.tied-aside',
      );
    };
    expect(tied(0.1)).toBe(false);
    expect(tied(2)).toBe(true);
  });
});

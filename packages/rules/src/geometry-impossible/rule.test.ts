import { english } from '@cribwright/messages/testing';
import type { Vehicle } from '@cribwright/model';
import { exactly } from '@cribwright/model';
import { foot, inch, planOf, samplePlans, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (change: Partial<Vehicle>) =>
  check(rule, planOf({ vehicles: [{ ...vanTrailer, ...change }] })).map((f) =>
    f.message.id.replace('geometry-impossible.', ''),
  );

describe('geometry-impossible', () => {
  it.each(Object.keys(samplePlans))('passes %s', (name) =>
    expect(check(rule, samplePlans[name] ?? planOf({}))).toEqual([]),
  );
  it('finds a vehicle without size', () => expect(found({ width: 0 })).toEqual(['no-size']));
  it('finds what lies outside', () => {
    expect(
      found({ parts: vanTrailer.parts.map((p) => (p.id === 'rail' ? { ...p, to: 60 * foot } : p)) }),
    ).toEqual(['part-outside']);
    expect(found({ axles: vanTrailer.axles.map((a) => ({ ...a, x: a.x + 4 * foot })) })).toEqual([
      'axle-outside',
    ]);
    expect(found({ cargo: vanTrailer.cargo.map((c) => ({ ...c, to: 70 * foot })) })).toEqual([
      'cargo-outside',
    ]);
    expect(
      found({
        parts: vanTrailer.parts.map((p) => (p.id === 'rail' ? { ...p, height: exactly(170 * inch) } : p)),
      }),
    ).toEqual(['height-backwards']);
  });
  it('finds a vehicle that rests on nothing', () => {
    const contacts = trailerOnCar.contacts.map((c) => ({
      ...c,
      points: c.points.map((p) => ({ ...p, x: p.x + 10 * foot })),
    }));
    const [finding] = check(rule, { ...trailerOnCar, contacts });
    expect(english(finding?.message)).toContain('but the car is not there. Its nearest point is 102 in away');
  });
  it('notes heights that do not meet', () => {
    const vehicles = trailerOnCar.vehicles.map((v) => ({
      ...v,
      parts: v.parts.map((p) => (p.id === 'roof' ? { ...p, height: exactly(50 * inch) } : p)),
    }));
    expect(english(check(rule, { ...trailerOnCar, vehicles })[0]?.message)).toContain(
      'there is a gap of 10 in between',
    );
  });
});

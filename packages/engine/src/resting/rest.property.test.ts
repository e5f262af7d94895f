import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spring, truck } from '../testing/one-body.js';
import { rest } from './rest.js';
import { insideBy, supportPolygon } from './support-polygon.js';
import type { RestingSystem, Spring } from './system.js';

const place = fc.record({
  x: fc.double({ min: -8, max: 8, noNaN: true }),
  y: fc.double({ min: -1.3, max: 1.3, noNaN: true }),
});
const stiff = fc.double({ min: 0, max: 6, noNaN: true }).map((e) => 10 ** e);
const contacts = fc.array(fc.tuple(place, stiff), { minLength: 1, maxLength: 50 });
const systems = fc
  .tuple(fc.double({ min: 1, max: 1e6, noNaN: true }), place, contacts)
  .map(([weight, c, list]) =>
    truck(
      weight,
      c.x,
      c.y,
      list.map(([p, k], i) => spring(`s${i}`, p.x, p.y, k)),
    ),
  );

/** Within a thousandth of a millimeter of the line round its supports: neither inside nor outside. */
const onEdge = ({ bodies: [body], springs }: RestingSystem) =>
  body === undefined || Math.abs(insideBy(supportPolygon(springs), body)) < 1e-6;

const apart = (a: Float64Array, b: Float64Array) =>
  Math.max(...a.map((f, i) => Math.abs(f - (b[i] ?? Number.NaN))));

describe('any body on any springs', () => {
  it('balances to nine digits, never pulls, and follows its springs', () => {
    fc.assert(
      fc.property(systems, (system) => {
        const r = rest(system);
        if (r.kind !== 'rests') return;
        const body = system.bodies[0] ?? { weight: 0, x: 0, y: 0 };
        const sum = (of: (s: Spring) => number) =>
          system.springs.reduce((t, s, i) => t + (r.forces[i] ?? 0) * of(s), 0);
        const left = [
          sum(() => 1) - body.weight,
          (sum((s) => s.x) - body.weight * body.x) / 16,
          (sum((s) => s.y) - body.weight * body.y) / 2.6,
          ...system.springs.map(
            (s, i) => (r.forces[i] ?? Number.NaN) - Math.max(0, s.stiffness * (r.closings[i] ?? Number.NaN)),
          ),
        ].map(Math.abs);
        expect(Math.max(...left)).toBeLessThan(1e-9 * body.weight);
        expect(Math.min(...r.forces)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 300 },
    );
  });

  it('rests exactly when its center of gravity stands inside its supports', () => {
    fc.assert(
      fc.property(systems, (system) => {
        const body = system.bodies[0] ?? { weight: 0, x: 0, y: 0 };
        const inside = insideBy(supportPolygon(system.springs), body);
        const { kind } = rest(system);
        if (inside > 1e-6) expect(kind).toBe('rests');
        if (inside < -1e-6) expect(kind).toBe('falls');
      }),
      { numRuns: 400 },
    );
  });

  it('answers a mirror image with the mirror image', () => {
    fc.assert(
      fc.property(systems, (system) => {
        fc.pre(!onEdge(system));
        const mirrored = {
          bodies: system.bodies.map((b) => ({ ...b, y: -b.y })),
          springs: system.springs.map((s) => ({ ...s, y: -s.y })),
        };
        const [a, b] = [rest(system), rest(mirrored)];
        expect(b.kind).toBe(a.kind);
        if (a.kind === 'rests' && b.kind === 'rests' && !a.balanced)
          expect(apart(a.forces, b.forces)).toBeLessThan(1e-6 * (system.bodies[0]?.weight ?? 1));
      }),
      { numRuns: 200 },
    );
  });

  it('gives half the loads for half the weight', () => {
    fc.assert(
      fc.property(systems, (system) => {
        fc.pre(!onEdge(system));
        const half = { ...system, bodies: system.bodies.map((b) => ({ ...b, weight: b.weight / 2 })) };
        const [a, b] = [rest(system), rest(half)];
        expect(b.kind).toBe(a.kind);
        if (a.kind === 'rests' && b.kind === 'rests')
          expect(
            apart(
              a.forces.map((f) => f / 2),
              b.forces,
            ),
          ).toBeLessThan(1e-8 * (system.bodies[0]?.weight ?? 1));
      }),
      { numRuns: 200 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compare, exceeds } from './compare.js';
import { dimensions } from './dimension.js';
import { parseNumber } from './parse-number.js';
import { fromSI, toSI } from './quantity.js';
import { readQuantity } from './read-quantity.js';
import { group, show } from './show.js';
import { showPair } from './show-pair.js';
import { units } from './units.js';

const named = units.filter((u) => u.id !== '');
const unit = fc.constantFrom(...named);
// Below this a float has fewer digits than it promises, and no quantity of ours is so small.
const number = fc.double({ min: -1e9, max: 1e9, noNaN: true }).map((n) => (Math.abs(n) < 1e-12 ? 0 : n));
const rounding = fc.constantFrom('up', 'down', 'nearest' as const);

describe('for any number and unit', () => {
  it('comes back through SI the same', () => {
    fc.assert(
      fc.property(number, unit, (n, u) => {
        expect(compare(fromSI(toSI(n, u), u), n, 1e-14)).toBe(0);
      }),
    );
  });

  it('reads back what it prints, within the printed step', () => {
    fc.assert(
      fc.property(number, unit, rounding, (n, u, way) => {
        const value = toSI(n, u);
        const text = show(value, u.dimension, u.id, { rounding: way });
        const read = readQuantity(text, u.dimension);
        expect(read.ok, text).toBe(true);
        if (!read.ok) return;
        const back = fromSI(read.value.value, u);
        // A per cent from 10 up is printed whole.
        const step = u.id === '%' ? 1 : u.step;
        expect(Math.abs(back - n)).toBeLessThanOrEqual(step + 1e-9 * Math.abs(n));
      }),
    );
  });

  it('never rounds the wrong way', () => {
    fc.assert(
      fc.property(number, unit, (n, u) => {
        const value = toSI(n, u);
        const printed = (way: 'up' | 'down') => {
          const read = readQuantity(show(value, u.dimension, u.id, { rounding: way }), u.dimension);
          return read.ok ? read.value.value : Number.NaN;
        };
        const dust = 1e-8 * Math.max(Math.abs(value), toSI(u.step, u));
        expect(printed('up')).toBeGreaterThanOrEqual(value - dust);
        expect(printed('down')).toBeLessThanOrEqual(value + dust);
      }),
    );
  });

  it('prints a value and its limit in the order that they have', () => {
    const near = fc.double({ min: -2e-3, max: 2e-3, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        near,
        unit,
        fc.constantFrom('most', 'least' as const),
        (limit, off, u, kind) => {
          const value = limit * (1 + off);
          fc.pre(Math.abs(off) > 1e-6 || off === 0);
          const pair = showPair(toSI(value, u), toSI(limit, u), u.dimension, u.id, { limit: kind });
          const digits = (text: string) => Number(text.replace(/[^\d.-]/g, '').replace(/[-.]+$/, ''));
          const bare = (text: string) => digits(text.split(' ')[0] ?? '');
          expect(Math.sign(bare(pair.value) - bare(pair.limit))).toBe(compare(value, limit));
        },
      ),
    );
  });
});

it('reads back every number that it groups', () => {
  fc.assert(
    fc.property(fc.integer({ min: -1e11, max: 1e11 }), (n) => {
      expect(parseNumber(group(n))).toEqual({ ok: true, value: n });
    }),
  );
});

it('never throws and never says NaN, whatever is written', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...`0123456789 ,.'"-+/½°%ftinlbkN`) })),
      fc.option(fc.constantFrom(...dimensions), { nil: undefined }),
      (text, wanted) => {
        const read = readQuantity(text, wanted);
        if (read.ok) expect(Number.isFinite(read.value.value)).toBe(true);
        else {
          expect(read.problem.from).toBeGreaterThanOrEqual(0);
          expect(read.problem.to).toBeLessThanOrEqual(text.length);
          expect(read.problem.to).toBeGreaterThanOrEqual(read.problem.from);
        }
      },
    ),
    { numRuns: 2000 },
  );
});

it('compares in both directions alike', () => {
  fc.assert(
    fc.property(number, number, (a, b) => {
      expect(compare(a, b) + compare(b, a)).toBe(0);
      expect(exceeds(a, b) && exceeds(b, a)).toBe(false);
    }),
  );
});

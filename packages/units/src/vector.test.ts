import { describe, expect, it } from 'vitest';
import { dimensions } from './dimension.js';
import {
  describeVector,
  dimensionOf,
  divide,
  multiply,
  plain,
  power,
  sameVector,
  vectorOf,
} from './vector.js';

describe('vectors', () => {
  it.each([
    ['area', multiply(vectorOf('length'), vectorOf('length'))],
    ['pressure', divide(vectorOf('force'), vectorOf('area'))],
    ['force', multiply(vectorOf('pressure'), vectorOf('area'))],
    ['moment', multiply(vectorOf('force'), vectorOf('length'))],
    ['stiffness', divide(vectorOf('force'), vectorOf('length'))],
    ['unit weight', divide(vectorOf('force'), vectorOf('volume'))],
    ['density', divide(vectorOf('mass'), vectorOf('volume'))],
    ['length', power(vectorOf('area'), 0.5)],
    ['ratio', divide(vectorOf('force'), vectorOf('force'))],
  ] as const)('%s', (name, vector) => expect(dimensionOf(vector)).toBe(name));

  it('keeps every dimension but count apart from every other', () => {
    for (const a of dimensions) {
      for (const b of dimensions) {
        const same = a === b || (['ratio', 'count'].includes(a) && ['ratio', 'count'].includes(b));
        expect(sameVector(vectorOf(a), vectorOf(b)), `${a} and ${b}`).toBe(same);
      }
    }
  });

  it('undoes a product by a quotient', () => {
    for (const d of dimensions) {
      expect(
        sameVector(divide(multiply(vectorOf(d), vectorOf('force')), vectorOf('force')), vectorOf(d)),
      ).toBe(true);
    }
    expect(sameVector(power(vectorOf('force'), 0), plain)).toBe(true);
  });

  it('names what it can', () => {
    expect(describeVector(vectorOf('force'))).toBe('a weight');
    expect(describeVector(multiply(vectorOf('force'), vectorOf('area')))).toBe('a weight times an area');
    expect(describeVector(power(vectorOf('length'), 4))).toBe('a length to the power 4');
  });
});

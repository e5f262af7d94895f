import { english } from '@cribwright/messages/testing';
import { planOf, step, trailerOnCar, truckOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { buildingStages } from './building.js';

const titles = (plan: Parameters<typeof buildingStages>[0]) =>
  buildingStages(plan).map((s) => english(s.title));

describe('stages of building', () => {
  it('starts as found and makes one of each step that changes what stands', () => {
    expect(titles(trailerOnCar)).toEqual([
      'as found',
      'step 2: chock the trailer with wheel chock K1',
      'step 3: capture the car with wheel chock K2, crib C1, crib C2',
      'step 4: build crib A, crib C',
      'step 5: build crib B, crib D',
      'step 6: set strut S1, strut S2, strut S3, strut S4',
      'step 8: tension strap T1, strap T2',
    ]);
    expect(buildingStages(trailerOnCar)[2]?.adding).toEqual(['chock/K2', 'crib/C1', 'crib/C2']);
  });

  it('puts what no step names at the end', () => {
    const plan = { ...truckOnCar, steps: [step(1, 'build', ['crib/A'])] };
    const last = buildingStages(plan).at(-1);
    expect(english(last?.title)).toBe('with supports that no step names');
    expect(last?.adding).toEqual([
      'crib/B',
      'crib/C',
      'crib/D',
      'crib/C1',
      'crib/C2',
      'chock/K1',
      'chock/K2',
    ]);
    expect(titles({ ...truckOnCar, steps: [] })).toEqual(['as found', 'all in place']);
    expect(titles(planOf({}))).toEqual(['as found']);
  });

  it('follows needs before the order of writing, and does not hang on a ring of them', () => {
    const late = step(1, 'build', ['crib/A'], { after: ['step/2'] });
    const early = step(2, 'build', ['crib/B']);
    expect(titles({ ...truckOnCar, steps: [late, early] }).slice(1, 3)).toEqual([
      'step 2: build crib B',
      'step 1: build crib A',
    ]);
    const ring = { ...early, after: [late.id] };
    expect(titles({ ...truckOnCar, steps: [late, ring] }).slice(1, 3)).toEqual([
      'step 1: build crib A',
      'step 2: build crib B',
    ]);
  });

  it('takes out what a step removes', () => {
    const plan = {
      ...truckOnCar,
      steps: [step(1, 'build', ['crib/A', 'crib/B']), step(2, 'remove', ['crib/A'])],
    };
    expect(buildingStages(plan)[2]?.standing).toEqual(['crib/B']);
    expect(buildingStages(plan).at(-1)?.standing).not.toContain('crib/A');
  });
});

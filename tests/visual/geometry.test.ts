import { drawScene, firstChoice, viewsOf } from '@cribwright/drawing';
import { type Item, type Scene, walk } from '@cribwright/drawing/page';
import { wordsIn } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { crib, planOf, straightTruck, strut, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { readQuantity } from '@cribwright/units';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type DrawnPlan, examplePlans, sampleDrawings } from './drawn-plans.js';
import {
  coveredShapes,
  cutShort,
  looseDimensions,
  offTheSheet,
  overBars,
  overlappingWords,
  struckOut,
  unnamed,
} from './faults.js';

/** What is wrong with a drawing to look at. */
const faults = (name: string, scene: Scene, covered = true): readonly string[] =>
  [
    ...overlappingWords(scene).map((w) => `over each other: ${w}`),
    ...offTheSheet(scene).map((w) => `off the sheet: ${w}`),
    ...(covered ? coveredShapes(scene).map((w) => `covered: ${w}`) : []),
    ...(covered ? cutShort(scene).map((w) => `cut short: ${w}`) : []),
    ...struckOut(scene).map((w) => `struck out by a line: ${w}`),
    ...overBars(scene).map((w) => `over a bar: ${w}`),
    ...looseDimensions(scene).map((w) => `touches not what it measures: ${w}`),
    ...unnamed(scene).map((w) => `without a name or place: ${w}`),
  ].map((fault) => `${name}, ${scene.choice.view}: ${fault}`);

let drawn: readonly DrawnPlan[] = [];
beforeAll(async () => {
  drawn = [...sampleDrawings(), ...(await examplePlans())];
});

it('has plans to draw', () => expect(drawn.length).toBeGreaterThan(12));

describe.each(['en', 'es'] as const)('every view of every plan (%s)', (locale) => {
  it('keeps words apart, inside the sheet and off the shapes of others', () => {
    const found = drawn.flatMap(({ name, plan, analysis }) => {
      const words = wordsIn(locale, plan.display);
      return viewsOf(plan, analysis).flatMap((view) =>
        faults(name, drawScene(plan, analysis, { ...firstChoice, view: view.id }, false, words)),
      );
    });
    expect(found).toEqual([]);
  });

  it('does so at every stage, with each first loss', () => {
    const found = drawn.flatMap(({ name, plan, analysis }) =>
      analysis.stages.flatMap(({ losses }, stage) =>
        (['top', 'side', 'end'] as const).flatMap((view) =>
          faults(
            `${name}, stage ${stage}`,
            drawScene(
              plan,
              analysis,
              { ...firstChoice, view, stage, lost: losses[0]?.id },
              false,
              wordsIn(locale, plan.display),
            ),
            false,
          ),
        ),
      ),
    );
    expect(found).toEqual([]);
  });
});

const groupOf = (scene: Scene, test: (key: string) => boolean) =>
  [...walk(scene.items)].filter(
    (i): i is Extract<Item, { kind: 'group' }> => i.kind === 'group' && test(i.key),
  );
const wordsOf = (items: readonly Item[]) =>
  [...walk(items)].flatMap((i) => (i.kind === 'text' ? [i.text] : []));
const meters = (text: string) => {
  const read = readQuantity(text, 'length');
  return read.ok ? read.value.value : Number.NaN;
};

describe('what is written on dimensions', () => {
  it('is the distance of each support from the front and the centerline, to the rounding that is printed', () => {
    for (const { plan, analysis } of drawn) {
      const scene = drawScene(plan, analysis, firstChoice);
      for (const support of plan.cribs) {
        for (const [axis, value] of [
          ['x', support.at.x],
          ['y', Math.abs(support.at.y)],
        ] as const) {
          const stations = groupOf(scene, (key) => key.startsWith(`station ${axis} `));
          const own = stations.filter((s) => {
            const [words = ''] = wordsOf([s]);
            const said = words
              .slice(words.indexOf(':') + 1)
              .replace(/(driver|passenger) side|on the centerline/, '')
              .trim();
            const read = said === '' ? 0 : meters(said);
            return Math.abs(Math.abs(read) - Math.abs(value)) < 0.006;
          });
          expect([support.name, axis, own.length > 0]).toEqual([support.name, axis, true]);
        }
      }
    }
  });

  it('is the height of the crib in its close-up', () => {
    for (const { plan, analysis } of drawn) {
      for (const c of plan.cribs) {
        const scene = drawScene(plan, analysis, { ...firstChoice, view: 'crib', subject: c.id });
        const [words = ''] = wordsOf(groupOf(scene, (key) => key === 'height'));
        expect(Math.abs(meters(words) - c.courses * c.timber.depth)).toBeLessThan(0.0015);
        const [shimmed = ''] = wordsOf(groupOf(scene, (key) => key === 'height with shims'));
        if (c.shims === 0) expect(shimmed).toBe('');
        else {
          const high = meters(shimmed.replace(' with shims', ''));
          expect(Math.abs(high - (c.courses * c.timber.depth + c.shims))).toBeLessThan(0.0015);
        }
      }
    }
  });
});

describe('random plans', () => {
  const place = fc.record({
    x: fc.double({ min: 1, max: 14, noNaN: true }),
    y: fc.double({ min: -3, max: 3, noNaN: true }),
  });
  const plans = fc
    .record({
      display: fc.constantFrom('us' as const, 'si' as const),
      cribs: fc.array(fc.tuple(place, fc.integer({ min: 1, max: 24 })), { maxLength: 7 }),
      struts: fc.array(place, { maxLength: 5 }),
      truck: fc.boolean(),
      title: fc.string({ maxLength: 120 }),
      // Names of any length: an officer may write what they like.
      named: fc.constantFrom('C', 'Crib', 'NorthernmostCribBesideTheLandingGearOnTheDriverSide'),
    })
    .map(
      ({ display, cribs, struts, truck, title, named }): Plan =>
        planOf({
          title,
          display,
          vehicles: truck
            ? [vanTrailer, { ...straightTruck, at: { x: 3, y: 5 }, heading: 0.4 }]
            : trailerOnCar.vehicles,
          cribs: cribs.map(([at, courses], i) => crib(`${named}${i}`, at.x, at.y, { courses })),
          struts: struts.map((at, i) => strut(`S${i}`, at.x, at.y, at.y < 0 ? at.y - 1.2 : at.y + 1.2)),
        }),
    );

  it('keep words apart and everything on the sheet, in every view', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const analysis = analyze(plan);
        for (const view of viewsOf(plan, analysis)) {
          const scene = drawScene(plan, analysis, { ...firstChoice, view: view.id });
          expect(scene.title).not.toBe('No drawing');
          expect(faults('random', scene, false)).toEqual([]);
        }
      }),
      { numRuns: Number(process.env.RANDOM_PLANS ?? 25) },
    );
  });
});

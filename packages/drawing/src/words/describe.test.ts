import { samplePlans, tallCrib, trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { describe, expect, it } from 'vitest';
import { drawScene, firstChoice, viewsOf } from '../scenes/draw-scene.js';

describe.each(Object.entries(samplePlans))('the words of %s', (_name, plan) => {
  const analysis = analyze(plan, { push: true });
  it.each(viewsOf(plan, analysis).map((v) => v.id))('read well aloud in the view %s', (view) => {
    const { words } = drawScene(plan, analysis, { ...firstChoice, view });
    expect(words).toMatch(/[.!?]$/);
    // No sentence that runs into the next, none that is empty, no list that goes on after a full stop.
    expect(words).not.toMatch(/\.\.|\., |\. \.| {2}|,,|undefined|NaN/);
    expect(words).toContain(`${plan.title}. `);
  });
});

it('tells of a close-up the loads of what it shows alone', () => {
  const words = (view: 'top' | 'crib') =>
    drawScene(trailerOnCar, analyze(trailerOnCar), { ...firstChoice, view, stage: 3, subject: 'crib/A' })
      .words;
  expect(words('top')).toContain('car axle 1, driver side:');
  expect(words('crib')).not.toContain('car axle 1, driver side:');
  expect(words('crib')).toContain('at this stage, as built');
});

it('puts what is wrong with a support after where it stands, in sentences', () => {
  const { words } = drawScene(tallCrib, analyze(tallCrib), firstChoice);
  expect(words).toMatch(
    /crib A, 49 in high, .*? back from the front, driver side [\w./ ]+\. Danger: Crib A is 49 in tall/,
  );
});

import { drawScene, firstChoice, svgOf, viewsOf } from '@cribwright/drawing';
import { beforeAll, expect, it } from 'vitest';
import { type DrawnPlan, examplePlans, sampleDrawings } from './drawn-plans.js';

/**
 * The drawings that were looked at and kept. A change shows as a difference here; look at the new drawing, then
 * run the tests with `-u` to keep it.
 */
let drawn: readonly DrawnPlan[] = [];
beforeAll(async () => {
  // The push from every side is slow to work out: one sample has it.
  drawn = [...sampleDrawings(['tallCrib'], ['tallCrib']), ...(await examplePlans())];
});

const file = (plan: string, view: string) =>
  `./reference/${plan}/${view.replaceAll(' ', '-').toLowerCase()}.svg`;

it('draws every view of every example as it was kept', async () => {
  let count = 0;
  for (const { name, plan, analysis } of drawn) {
    for (const view of viewsOf(plan, analysis)) {
      const svg = svgOf(drawScene(plan, analysis, { ...firstChoice, view: view.id }));
      await expect(svg).toMatchFileSnapshot(file(name, view.id));
      count++;
    }
  }
  expect(count).toBeGreaterThan(60);
});

it('draws a stage and a loss as they were kept', async () => {
  const [first] = drawn;
  const stage = first?.analysis.stages[4];
  if (first === undefined || stage === undefined) throw new Error('the sample plan has no fifth stage');
  for (const view of ['top', 'side'] as const) {
    const choice = { ...firstChoice, view, stage: 4, lost: stage.losses[0]?.id };
    await expect(svgOf(drawScene(first.plan, first.analysis, choice))).toMatchFileSnapshot(
      file(`${first.name}-stage-5-loss`, view),
    );
  }
});

it('has the data of a scene as it was kept', async () => {
  const [first] = drawn;
  if (first === undefined) throw new Error('there is no sample plan');
  const { items, ...head } = drawScene(first.plan, first.analysis, { ...firstChoice, view: 'crib' });
  await expect(JSON.stringify({ ...head, items }, undefined, 1)).toMatchFileSnapshot('./reference/scene.txt');
});

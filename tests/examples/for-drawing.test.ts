import { drawScene, firstChoice, svgOf, viewsOf } from '@cribwright/drawing';
import type { PlanReply } from '@cribwright/workspace';
import { expect, it } from 'vitest';
import { forDrawing } from '../../packages/server/src/features/for-drawing.js';
import { readPlans } from './read-plans.js';

const size = ({ analysis: { supports, findings } }: PlanReply): number =>
  JSON.stringify([supports, findings]).length;

it('draws of what is sent to the panel what it draws of the whole', async () => {
  const { files } = await readPlans(['examples/plans']);
  const replies = files.flatMap((f) => f.plans.map((p) => p.reply));
  expect(replies.length).toBeGreaterThan(5);
  for (const reply of replies) {
    const sent = forDrawing(reply);
    expect(size(sent)).toBeLessThan(size(reply) / 2);
    for (const { id: view } of viewsOf(reply.plan, reply.analysis)) {
      const drawn = ({ plan, analysis }: typeof reply) =>
        svgOf(drawScene(plan, analysis, { ...firstChoice, view }));
      expect(drawn(sent)).toBe(drawn(reply));
    }
  }
});

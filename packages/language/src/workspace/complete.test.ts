import { expect, it } from 'vitest';
import { fleet, trailerPlan } from '../features/testing/plans.js';
import { openWorkspace } from './workspace.js';

const uri = 'memory:/plan.crib';
const files = { read: async (asked: string) => (asked === 'memory:/fleet.crib' ? fleet : undefined) };
const text = trailerPlan.replace('from 4 ft to 48 ft', 'from 4 ft to 48 ft height 72 in');

async function opened(push: boolean) {
  const workspace = openWorkspace({ files, folders: [], push });
  workspace.put(uri, text, 1);
  await workspace.load(uri);
  return workspace;
}

it('leaves the push open until it is worked out, and then says the same as in one go', async () => {
  const [inSteps, atOnce] = [await opened(false), await opened(true)];
  expect(inSteps.check(uri).pending).toBe(true);
  expect(inSteps.check(uri).plans[0]?.analysis.push).toBeUndefined();
  let stops = 0;
  const steps = inSteps.complete(uri);
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) stops++;
  expect(step.value).toBe(true);
  expect(stops).toBeGreaterThan(1);
  // `valuesAt` is asked when a pointer rests on a name; it is a function, and no two functions are alike.
  const { valuesAt: _stepped, ...stepped } = inSteps.check(uri);
  const { valuesAt: _whole, ...whole } = atOnce.check(uri);
  expect(stepped).toEqual(whole);
  expect(inSteps.check(uri).plans[0]?.analysis.push).toBeDefined();
  expect(atOnce.check(uri).pending).toBe(false);
});

it('has nothing left to do the second time', async () => {
  const workspace = await opened(false);
  for (const _step of workspace.complete(uri));
  expect(workspace.complete(uri).next()).toEqual({ done: true, value: false });
});

it('keeps what was worked out through an edit that changes no plan', async () => {
  const workspace = await opened(false);
  for (const _step of workspace.complete(uri));
  workspace.put(uri, `// a comment\n${text}`, 2);
  expect(workspace.check(uri).pending).toBe(false);
});

import { expect, it } from 'vitest';
import { fleet, trailerPlan } from '../testing/plans.js';
import { openWorkspace } from './open-workspace.js';
import type { WorkspaceOptions } from './workspace.js';

const uri = 'memory:/plan.crib';
const files = { read: async (asked: string) => (asked === 'memory:/fleet.crib' ? fleet : undefined) };
const text = trailerPlan.replace('from 4 ft to 48 ft', 'from 4 ft to 48 ft height 72 in');

async function opened(push: boolean, timeLimit?: WorkspaceOptions['timeLimit']) {
  const workspace = openWorkspace({ files, folders: [], push, timeLimit });
  workspace.put(uri, text, 1);
  await workspace.load(uri);
  return workspace;
}

it('leaves the push open until it is worked out, and then says the same as in one go', async () => {
  const [inSteps, atOnce] = [await opened(false), await opened(true)];
  expect(inSteps.check(uri).pending).toBe('push');
  expect(inSteps.check(uri).plans[0]?.analysis.push).toBeUndefined();
  expect(stopsOf(inSteps.complete(uri, 'push'))).toBeGreaterThan(1);
  expect(inSteps.check(uri)).toEqual(atOnce.check(uri));
  expect(inSteps.check(uri).plans[0]?.analysis.push).toBeDefined();
  expect(atOnce.check(uri).pending).toBeUndefined();
});

it('shows what was worked out for another file that holds the same plan', async () => {
  const workspace = await opened(false);
  const copy = 'memory:/copy.crib';
  workspace.put(copy, text, 1);
  await workspace.load(copy);
  expect(workspace.check(copy).pending).toBe('push');
  stopsOf(workspace.complete(uri, 'push'));
  expect(workspace.check(copy).pending).toBeUndefined();
  expect(workspace.check(copy).plans[0]?.analysis.push).toBeDefined();
});

it('has nothing left to do the second time', async () => {
  const workspace = await opened(false);
  stopsOf(workspace.complete(uri, 'push'));
  expect(workspace.complete(uri, 'push').next()).toEqual({ done: true, value: false });
});

it('keeps what was worked out through an edit that changes no plan', async () => {
  const workspace = await opened(false);
  stopsOf(workspace.complete(uri, 'push'));
  workspace.put(uri, `// a comment\n${text}`, 2);
  expect(workspace.check(uri).pending).toBeUndefined();
});

/** Runs steps to their end. Gives how often they stopped. */
function stopsOf(steps: Generator<void, boolean>): number {
  let stops = 0;
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) stops++;
  expect(step.value).toBe(true);
  return stops;
}

/** A clock that runs on by so much each time somebody looks. */
const clock = (by: number, over: number): NonNullable<WorkspaceOptions['timeLimit']> => {
  let time = 0;
  return { now: () => (time += by), over };
};

it('says all at once where that is quick', async () => {
  const [hurried, plain] = [await opened(false, clock(0, 40)), await opened(false)];
  expect(hurried.layout(uri)).toBeUndefined();
  expect(hurried.check(uri)).toEqual(plain.check(uri));
});

it('says first what hangs on no load where the loads take long, and then the same as in one go', async () => {
  const [hurried, plain] = [await opened(false, clock(1, 3)), await opened(false)];
  // How long they take is not known the first time.
  expect(hurried.layout(uri)).toBeUndefined();
  const first = hurried.check(uri);
  expect(first.pending).toBe('loads');
  expect(first.plans[0]?.analysis).toMatchObject({ pending: 'loads', stages: [], expectations: [] });
  stopsOf(hurried.complete(uri, 'loads'));
  expect(hurried.check(uri)).toEqual(plain.check(uri));
});

it('never shows the loads of the text before the edit', async () => {
  const workspace = await opened(false, clock(1, 3));
  workspace.check(uri);
  stopsOf(workspace.complete(uri, 'loads'));
  expect(workspace.check(uri).plans[0]?.analysis.supports[0]?.figures.load).toBeDefined();
  workspace.put(uri, text.replace('36,000 lb', '37,000 lb'), 2);
  const layout = workspace.layout(uri);
  expect(layout).toMatchObject({ pending: true, version: 2 });
  expect(layout?.plans[0]?.analysis).toMatchObject({ unchecked: true, findings: [] });
  const { plans, pending } = workspace.check(uri);
  expect(pending).toBe('loads');
  expect(plans[0]?.analysis.supports[0]?.figures.load).toBeUndefined();
  expect(plans[0]?.analysis.supports[0]?.figures.height).toBeDefined();
});

it('goes on with the new text where an edit comes between two steps', async () => {
  const workspace = await opened(false, clock(1, 3));
  const steps = workspace.complete(uri, 'loads');
  steps.next();
  const changed = text.replace('36,000 lb', '37,000 lb');
  workspace.put(uri, changed, 2);
  for (let step = steps.next(); step.done !== true; step = steps.next());
  expect(workspace.check(uri)).toMatchObject({ version: 2, pending: 'push' });
  const plain = await opened(false);
  plain.put(uri, changed, 2);
  expect(workspace.check(uri)).toEqual(plain.check(uri));
});

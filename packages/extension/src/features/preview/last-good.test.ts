import type { AnalysisReply, PlanReply } from '@cribwright/workspace';
import { expect, it } from 'vitest';
import { joined } from './last-good.js';

const uri = 'file:///plans/van.crib';

/** Only what `joined` looks at: title and whether it was read whole. */
const plan = (title: string, partial = false) => ({ plan: { title }, analysis: {}, partial }) as PlanReply;
const reply = (
  version: number,
  state: AnalysisReply['state'],
  plans: readonly PlanReply[],
): AnalysisReply => ({ uri, version, state, plans, pending: false });

it('shows a whole reading as it is', () => {
  const good = reply(1, 'good', [plan('Car under a rail')]);
  expect(joined(undefined, good)).toEqual({
    uri,
    version: 1,
    errors: false,
    plans: good.plans,
    pending: false,
    stale: undefined,
  });
});

it('keeps the last good drawing while the text has errors, and says so', () => {
  const before = joined(undefined, reply(1, 'good', [plan('Car under a rail')]));
  const after = joined(before, reply(2, 'errors', [plan('Car under a rail', true)]));
  expect(after.plans).toEqual(before.plans.map((p) => ({ ...p, old: true })));
  expect(after).toMatchObject({ version: 2, stale: 'last good' });
  expect(joined(after, reply(3, 'errors', []))).toMatchObject({ plans: after.plans, stale: 'last good' });
  expect(joined(after, reply(4, 'good', [plan('Car under a rail')])).plans).toEqual(before.plans);
});

it('says of a plan that is drawn as it was what cannot be read now', () => {
  const unread = [{ file: 'fleet.crib' }] as unknown as PlanReply['unread'];
  const before = joined(undefined, reply(1, 'good', [plan('One')]));
  const after = joined(before, reply(2, 'errors', [{ ...plan('One', true), unread }]));
  expect(after.plans[0]).toMatchObject({ partial: false, old: true, unread });
});

it('draws the plans that have no error as they are now', () => {
  const before = joined(undefined, reply(1, 'good', [plan('One'), plan('Two')]));
  const [one, two] = [plan('One'), plan('Two', true)];
  const after = joined(before, reply(2, 'errors', [one, two]));
  expect(after.plans[0]).toEqual(one);
  expect(after.plans[1]).toEqual({ ...before.plans[1], old: true });
});

it('draws as far as it could read where there was never a whole reading', () => {
  const first = reply(1, 'errors', [plan('One', true)]);
  expect(joined(undefined, first)).toMatchObject({ plans: first.plans, stale: 'as far as read' });
});

it('keeps the objects of what did not change, so that it is not drawn again', () => {
  const named = (title: string, ...cribs: object[]) =>
    ({ plan: { title, cribs }, analysis: {}, partial: false }) as unknown as PlanReply;
  const before = joined(undefined, reply(1, 'good', [named('One', { id: 'A', x: 1 }, { id: 'B', x: 2 })]));
  const after = joined(before, reply(2, 'good', [named('One', { id: 'A', x: 3 }, { id: 'B', x: 2 })]));
  expect(after.plans[0]?.plan.cribs[0]).toEqual({ id: 'A', x: 3 });
  expect(after.plans[0]?.plan.cribs[1]).toBe(before.plans[0]?.plan.cribs[1]);
});

it('keeps the places of the reading before for a layout, which brings none', () => {
  const places = {
    'crib/A': { uri, range: { start: { line: 3, character: 2 }, end: { line: 3, character: 8 } } },
  };
  const before = joined(undefined, reply(1, 'good', [{ ...plan('One'), places }]));
  const layout = { ...plan('One'), analysis: { unchecked: true }, places: {} } as PlanReply;
  expect(joined(before, reply(2, 'good', [layout])).plans[0]).toEqual({ ...layout, places });
  expect(joined(undefined, reply(2, 'good', [layout])).plans[0]?.places).toEqual({});
});

it('does not show a plan of another file', () => {
  const other = joined(undefined, { ...reply(1, 'good', [plan('One')]), uri: 'file:///other.crib' });
  expect(joined(other, reply(1, 'errors', []))).toMatchObject({ plans: [], stale: undefined });
});

it('lets a plan go that was taken out of the text', () => {
  const before = joined(undefined, reply(1, 'good', [plan('One')]));
  expect(joined(before, reply(2, 'no plan', [])).plans).toEqual([]);
});

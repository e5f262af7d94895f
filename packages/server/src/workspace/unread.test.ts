import { withUnread } from '@cribwright/workspace/internal';
import { describe, expect, it } from 'vitest';
import { lensesOf } from '../features/code-lens.js';
import { itemsOf } from '../features/expectations.js';
import { contextOf } from '../testing/context-of.js';

const plan = (inner = '') => `use "fleet.crib"
use "library/vehicles.crib"
plan "P" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53 { cargo usual from 4 ft to 48 ft }
${inner}
  expect safe
}
`;
const usual = 'let usual = 20,000 lb\n';

async function checked(files: Record<string, string>) {
  const desk = contextOf(files);
  const uri = 'memory:/plan.crib';
  const found = await desk.checked(uri);
  const bound = desk.workspace.bound(uri);
  if (!found || !bound) throw new Error('the plan was not read');
  return { desk, bound, checked: found };
}

const unreadOf = async (files: Record<string, string>) => {
  const { plans } = (await checked(files)).checked;
  return plans.map((p) => p.unread.map((u) => `${u.file}:${u.range.start.line + 1}`));
};

describe('what a plan could not read', () => {
  it('is nothing where all of it is right', async () => {
    expect(await unreadOf({ 'plan.crib': plan(), 'fleet.crib': usual })).toEqual([[]]);
  });

  it('is an error in a file that is used, or used by that', async () => {
    const files = {
      'plan.crib': plan(),
      'fleet.crib': `use "far.crib"\n${usual}`,
      'far.crib': 'cache A { peeple 2 }\n',
    };
    expect((await unreadOf(files))[0]).toContain('far.crib:1');
    const { problems } = (await checked(files)).checked;
    const told = problems.find((p) => p.code === 'use-not-whole');
    expect(told?.span).toEqual({ start: 5, end: 15 });
    expect(told?.severity).toBe('danger');
    expect(told?.related.map((r) => r.uri)).toContain('memory:/far.crib');
  });

  it('is told once, at the first use through which it is read', async () => {
    const files = {
      'plan.crib': `use "b.crib"\n${plan()}`,
      'fleet.crib': usual,
      'b.crib': 'use "fleet.crib"\ncachee A {}\n',
    };
    const { problems } = (await checked(files)).checked;
    expect(problems.filter((p) => p.code === 'use-not-whole')).toHaveLength(1);
  });

  it('is no error inside another plan, in its own file or a used one', async () => {
    const other = 'plan "Other" {\n  ground { surfase asphalt }\n}\n';
    expect((await unreadOf({ 'plan.crib': plan(), 'fleet.crib': usual + other }))[0]).toEqual([]);
    expect((await unreadOf({ 'plan.crib': plan() + other, 'fleet.crib': usual }))[0]).toEqual([]);
  });

  it('is every error of a file whose braces do not close, for then its plans have no certain end', async () => {
    const other = 'plan "Other" {\n  ground { surfase asphalt }\n';
    expect((await unreadOf({ 'plan.crib': plan(), 'fleet.crib': usual + other }))[0]).toContain(
      'fleet.crib:3',
    );
  });

  it('is every error of a file in which a block stands in a plan and belongs outside', async () => {
    const other = 'plan "Other" {\n  vehicle type Loose : VanTrailer53 {\n    cargoo 900 lb\n  }\n}\n';
    expect((await unreadOf({ 'plan.crib': plan(), 'fleet.crib': usual + other }))[0]).toContain(
      'fleet.crib:4',
    );
  });

  it('is put right by an edit of the used file', async () => {
    const { desk, checked: before } = await checked({
      'plan.crib': plan(),
      'fleet.crib': 'let usual = 20,0 lb\n',
    });
    expect(before.plans[0]?.partial).toBe(true);
    desk.workspace.put('memory:/fleet.crib', usual, 2);
    expect(desk.workspace.check('memory:/plan.crib').plans[0]).toMatchObject({ partial: false, unread: [] });
  });

  it('is never counted as zero', async () => {
    const { plans } = (await checked({ 'plan.crib': plan(), 'fleet.crib': 'let usual = 70,0000 lb\n' }))
      .checked;
    expect(plans[0]?.plan.vehicles[0]?.cargo).toEqual([]);
  });

  it('leaves no expectation held and no lens clean', async () => {
    const {
      desk,
      bound,
      checked: seen,
    } = await checked({
      'plan.crib': plan(),
      'fleet.crib': 'let usual = 70,0000 lb\n',
    });
    expect(itemsOf(desk, bound.uri, seen)).toMatchObject([
      { held: false, why: 'the plan was not read whole' },
    ]);
    const [lens] = lensesOf(desk, bound, { ...seen, pending: undefined });
    expect(lens?.command?.title).toMatch(/^NOT READ WHOLE/);
    expect(lens?.command?.title).not.toContain('nothing unsafe');
    expect(seen.plans[0]?.analysis.findings.filter((f) => f.rule === 'expectation-unmet')).toMatchObject([
      { couldNotRun: true },
    ]);
  });

  it('leaves a crib out whose overhang cannot be read, and does not take the usual one', async () => {
    const crib = (overhang: string) => `  crib A {
    timber Fir4x4 24 in long
    layout 2 by 2
    courses 6
    overhang ${overhang}
    at 20 ft, driver side 3 ft 6 in
    captures rail
  }`;
    const cribs = async (overhang: string, extra = '') =>
      (await checked({ 'plan.crib': plan(crib(overhang)), 'fleet.crib': usual + extra })).checked.plans[0]
        ?.plan.cribs;
    expect(await cribs('4 in')).toHaveLength(1);
    expect(await cribs('0,4 in')).toEqual([]);
    expect(await cribs('lip', 'let lip = 0,4 in\n')).toEqual([]);
  });

  it('is told at the title where no message tells of it', async () => {
    const { bound, checked: seen } = await checked({ 'plan.crib': plan(), 'fleet.crib': usual });
    const block = bound.blocks.find((b) => b.schema.keyword === 'plan');
    const [reply] = seen.plans;
    if (!block || !reply) throw new Error('there is no plan');
    const place = { uri: bound.uri, span: block.headSpan, text: bound.text };
    const silent = {
      plan: reply.plan,
      places: new Map(),
      block,
      text: bound.text,
      partial: true,
      unread: [],
      placeOf: () => place,
    };
    const marked = withUnread(
      { ...bound, problems: [] },
      { plans: [silent], problems: [], parts: [], valuesAt: () => [] },
      { bound: () => undefined, targets: () => [], always: [] },
    );
    expect(marked.problems).toMatchObject([
      { code: 'plan-not-whole', severity: 'error', span: block.headSpan },
    ]);
    expect(marked.plans[0]).toMatchObject({
      partial: true,
      unread: [{ file: 'plan.crib' }],
      plan: { partial: true },
    });
  });
});

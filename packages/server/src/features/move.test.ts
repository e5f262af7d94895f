import type { MoveParams } from '@cribwright/workspace';
import { applyChanges } from '@cribwright/workspace/internal';
import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { describe, expect, it } from 'vitest';
import { spanOf } from '../context/positions.js';
import { atCursor } from '../testing/context-of.js';
import { moveOf } from './move.js';

const ft = 0.3048;
const withStrut = `use "library/gear.crib"\n${trailerPlan}`.replace(
  '\n  steps',
  '\n  strut S1 : Strut4to8ft {\n    head  trailer rail near 26 ft, passenger side\n    base  4 ft out\n    lock  pinned\n  }\n\n  steps',
);

/** The plan's lines that differ after the move, or why it was refused. */
async function moved(change: [string, string], move: Pick<MoveParams, 'element' | 'moves' | 'to'>) {
  const text = withStrut.replace(...change);
  const { desk, file } = await atCursor(`<|>${text}`, { 'fleet.crib': fleet });
  const reply = await moveOf(desk, { uri: file.uri, version: file.version, ...move });
  if ('refused' in reply) return reply.refused;
  const edits = reply.edit.changes?.[file.uri] ?? [];
  const after = applyChanges(
    text,
    edits.map((e) => ({ span: spanOf(file, e.range), text: e.newText })),
  );
  const before = new Set(text.split('\n'));
  return after
    .split('\n')
    .filter((l) => !before.has(l))
    .map((l) => l.trim())
    .join('\n');
}
const same: [string, string] = ['§', '§'];
const place = '21 ft, driver side 3 ft 4 in';

describe('a crib that is measured from something else', () => {
  const crib = (x: number) => ({ element: 'crib/A', moves: 'center' as const, to: { x: x * ft } });
  const at = (along: string): [string, string] => [place, `${along}, driver side 3 ft 4 in`];

  it('keeps what it is measured from, and changes the distance to it', async () => {
    // The trailer is 53 ft long: 32 ft from its rear is 21 ft back.
    expect(await moved(at('32 ft from the rear'), crib(22.5))).toBe(
      'at        30 ft 6 in from the rear, driver side 3 ft 4 in',
    );
    expect(await moved(at('18 ft behind kingpin'), crib(22.5))).toBe(
      'at        19 ft 6 in behind kingpin, driver side 3 ft 4 in',
    );
  });

  it('is not moved past what it is ahead of', async () => {
    expect(await moved(at('1 ft ahead of kingpin'), crib(30))).toMatch(/cannot be dragged that way/);
  });
});

describe('a crib', () => {
  const crib = (to: MoveParams['to']) => ({ element: 'crib/A', moves: 'center' as const, to });
  it('goes back and across in feet and inches', async () => {
    expect(await moved(same, crib({ x: 22.5 * ft, y: -3 * ft }))).toBe(
      'at        22 ft 6 in, driver side 3 ft',
    );
  });
  it('changes only the length that changed', async () => {
    expect(await moved(same, crib({ x: 22 * ft }))).toBe('at        22 ft, driver side 3 ft 4 in');
    expect(await moved(same, crib({ x: 21 * ft, y: -(3 + 4 / 12) * ft }))).toBe('');
  });
  it('crosses to the other side', async () => {
    expect(await moved(same, crib({ y: 2 * ft }))).toBe('at        21 ft, passenger side 2 ft');
  });
  it('comes to the middle, and leaves it', async () => {
    expect(await moved(same, crib({ y: 0 }))).toBe('at        21 ft, center');
    expect(await moved([place, '21 ft, center'], crib({ y: -1 * ft }))).toBe(
      'at        21 ft, driver side 1 ft',
    );
    expect(await moved([place, '21 ft'], crib({ y: -1 * ft }))).toBe('at        21 ft, driver side 1 ft');
  });
  it('keeps meters where the plan is written in meters', async () => {
    expect(await moved([place, '6.4 m, driver side 1.02 m'], crib({ x: 7, y: -1.1 }))).toBe(
      'at        7 m, driver side 1.1 m',
    );
  });
  it('stays where it is worked out, and says why', async () => {
    expect(await moved([place, '20 ft + 1 ft, driver side 3 ft'], crib({ x: 7 }))).toContain(
      'calculated from other values',
    );
  });
  it('stays where its place is said by a part', async () => {
    expect(await moved([place, 'near joists 14, driver side 3 ft'], crib({ x: 7 }))).toContain(
      'given by a part',
    );
  });
  it('never goes in front of the vehicle by a negative length', async () => {
    expect(await moved(same, crib({ x: -1 }))).toContain('cannot be dragged');
  });
});

describe('a strut', () => {
  it('puts its foot further out, counted from its head', async () => {
    const { desk, file } = await atCursor(`<|>${withStrut}`, {
      'fleet.crib': fleet,
    });
    const head = (await desk.checked(file.uri))?.plans[0]?.plan.struts[0]?.head;
    expect(head).toBeDefined();
    const to = { y: (head?.y ?? 0) + 5 * ft };
    expect(await moved(same, { element: 'strut/S1', moves: 'base', to })).toBe('base  5 ft out');
  });
  it('slides its head along the rail', async () => {
    expect(await moved(same, { element: 'strut/S1', moves: 'head', to: { x: 28 * ft } })).toBe(
      'head  trailer rail near 28 ft, passenger side',
    );
  });
});

it('refuses when the text has moved on, and what is not there', async () => {
  const { desk, file } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  const crib = { uri: file.uri, moves: 'center' as const, to: { x: 7 } };
  expect(await moveOf(desk, { ...crib, element: 'crib/A', version: 99 })).toHaveProperty('refused');
  expect(await moveOf(desk, { ...crib, element: 'crib/Z', version: file.version })).toHaveProperty('refused');
});

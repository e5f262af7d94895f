import { english } from '@cribwright/messages/testing';
import type { PlanEdit } from '@cribwright/model';
import { trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';
import { anchorFix } from './anchor-fix.js';
import { captureOptions } from './capture-options.js';
import { moveClearFix } from './crib-fixes.js';
import { freeName } from './free-name.js';
import { chockInSteps, workInSteps } from './step-edits.js';
import { mirrorFix, strapFixes } from './strut-fixes.js';
import { twinFixes } from './twin-fix.js';

const texts = (edits: readonly PlanEdit[] | undefined): readonly string[] =>
  (edits ?? []).flatMap((e) => (e.kind === 'insert' ? [e.text] : []));
const strut = (id: string, plan = trailerOnCar) => {
  const found = plan.struts.find((s) => s.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const crib = (id: string) => {
  const found = trailerOnCar.cribs.find((c) => c.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

describe('freeName', () => {
  it('is the first that nobody has', () => {
    expect(freeName('T', [])).toBe('T1');
    expect(freeName('T', [{ name: 'T1' }, { name: 'T3' }])).toBe('T4');
    expect(freeName('T', [{ name: 'A' }])).toBe('T2');
  });
});

describe('work in the steps', () => {
  const tension = trailerOnCar.steps.find((s) => s.action === 'tension');

  it('goes into the step that does the like, where that comes late enough', () => {
    expect(workInSteps(trailerOnCar, [{ action: 'tension', name: 'T9' }], ['strut/S1'])).toEqual([
      { kind: 'append', at: tension?.ref, text: 'T9' },
    ]);
  });

  it('is a step of its own behind what must be in place, where none does the like', () => {
    const steps = trailerOnCar.steps.filter((s) => s.action !== 'tension');
    const set = steps.findLast((s) => s.action !== 'check' && s.targets.includes('strut/S1'));
    expect(
      workInSteps({ ...trailerOnCar, steps }, [{ action: 'tension', name: 'T9' }], ['strut/S1']),
    ).toEqual([{ kind: 'insert steps', at: set?.ref, where: 'behind', texts: ['tension  T9'] }]);
  });

  it('is none in a plan without steps', () => {
    const bare = { ...trailerOnCar, steps: [] };
    expect(workInSteps(bare, [{ action: 'tension', name: 'T9' }])).toEqual([]);
    expect(chockInSteps(bare, 'trailer')).toEqual([]);
  });

  it('chocks before anything is built', () => {
    const steps = trailerOnCar.steps.filter((s) => s.action !== 'chock');
    const first = steps.find((s) => s.action !== 'size up');
    expect(chockInSteps({ ...trailerOnCar, steps }, 'trailer')).toEqual([
      { kind: 'insert steps', at: first?.ref, where: 'before', texts: ['chock  trailer both directions'] },
    ]);
  });
});

describe('what a crib could capture', () => {
  it('is the rail and the joists over a crib at the edge of a trailer: all four contacts', () => {
    const [best] = captureOptions(crib('crib/A'), workingsOf(trailerOnCar));
    expect(best).toMatchObject({ text: 'rail, joists', loaded: 4 });
  });
});

describe('a crib in the way of another', () => {
  it('is moved until the two are clear of each other, and meets as much as before', () => {
    const [a, b] = [crib('crib/A'), crib('crib/B')];
    // On the place of the other, a foot along.
    const moved = { ...a, at: { x: b.at.x + 0.3048, y: b.at.y } };
    const plan = { ...trailerOnCar, cribs: trailerOnCar.cribs.map((c) => (c.id === a.id ? moved : c)) };
    const [fix] = moveClearFix(moved, workingsOf(plan));
    const edit = fix?.edits[0];
    if (edit?.kind !== 'place') throw new Error('no place');
    // Timbers of both are 24 in long.
    expect(Math.max(Math.abs(edit.to.x - b.at.x), Math.abs(edit.to.y - b.at.y))).toBeGreaterThanOrEqual(
      b.timber.length - 1e-9,
    );
  });
});

describe('struts', () => {
  it('are strapped across, else to the part above; what the plan has is left out', () => {
    const untied = { ...trailerOnCar, ties: [] };
    const titles = strapFixes(strut('strut/S1'), workingsOf(untied)).map((f) => english(f.title));
    expect(titles[0]).toBe('Strap the bases of S1 and S2 together');
    expect(titles[1]).toMatch(/^Strap the base of S1 to the .*rail of the trailer$/);
    const tied = strapFixes(strut('strut/S1'), workingsOf(trailerOnCar)).map((f) => english(f.title));
    expect(tied).not.toContain(titles[0]);
  });

  it('get one of their own kind on the other side, as far out, and a strap from base to base', () => {
    const plan = { ...trailerOnCar, struts: [strut('strut/S1')], ties: [] };
    const [fix] = mirrorFix(strut('strut/S1'), workingsOf(plan));
    const [set, strap] = texts(fix?.edits);
    expect(set).toMatch(/passenger side/);
    expect(set).toMatch(/base {2}3 ft 2 in out/);
    expect(strap).toMatch(/from S1 base to S2 base/);
  });

  it('are joined by more like them along the vehicle, with the like straps', () => {
    const fixes = twinFixes(strut('strut/S1'), workingsOf(trailerOnCar));
    expect(fixes.length).toBeGreaterThan(0);
    for (const fix of fixes) {
      const put = texts(fix.edits);
      expect(put.filter((t) => t.startsWith('strut '))).toHaveLength(2);
      expect(put.find((t) => t.startsWith('strap '))).toMatch(/from S5 base to S6 base/);
    }
  });
});

describe('a strap to an anchor', () => {
  it('runs against the push, to an anchor that holds what the strap does', () => {
    // Pushed to the rear, it is held from the front.
    const [fix] = anchorFix('vehicle/trailer', 0, workingsOf(trailerOnCar));
    expect(english(fix?.title)).toMatch(/toward the front/);
    const [anchor] = texts(fix?.edits);
    expect(anchor).toMatch(/at {5}-\d+ ft/);
    const rating = trailerOnCar.ties.find((t) => t.gear.rating !== undefined)?.gear.rating ?? 0;
    const holds = Number(/holds {2}([\d,]+) lb/.exec(anchor ?? '')?.[1]?.replace(',', ''));
    expect(holds * 4.4482216152605).toBeGreaterThanOrEqual(rating - 1e-6);
  });

  it('is none where no strap has a rating', () => {
    const ties = trailerOnCar.ties.map((t) => ({ ...t, gear: { ...t.gear, rating: undefined } }));
    expect(anchorFix('vehicle/trailer', 0, workingsOf({ ...trailerOnCar, ties }))).toEqual([]);
  });
});

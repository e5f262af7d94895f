import { inOneGo } from '@cribwright/engine/internal';
import { describe, expect, it } from 'vitest';
import { scaleHousePlan } from '../testing/index.js';
import { openWorkspace } from '../workspace/open-workspace.js';
import { makeSafe, type SafetyPlan } from './make-safe.js';

const uri = 'file:///alder-ridge/case.crib';

function searched(text: string): { plan: SafetyPlan; textAfter: string; unsafeAfter: readonly string[] } {
  const workspace = openWorkspace({
    files: { read: async () => undefined },
    folders: ['file:///alder-ridge'],
    today: '2026-11-01',
    push: true,
  });
  workspace.put(uri, text, 1);
  const found = inOneGo(makeSafe(workspace, uri));
  const textAfter = workspace.bound(uri)?.text ?? '';
  // What it comes to is checked anew, from its text alone.
  workspace.put(uri, found.texts[uri] ?? text, 2);
  for (const _step of workspace.complete(uri, 'push'));
  const unsafeAfter = workspace
    .check(uri)
    .problems.filter((p) => p.severity === 'danger' || p.finding?.couldNotRun === true)
    .map((p) => p.code);
  return { plan: found, textAfter, unsafeAfter };
}

describe('makeSafe', () => {
  it('finds the change that leaves nothing unsafe, and gives the workspace its own text again', () => {
    const text = scaleHousePlan(8);
    const { plan: found, textAfter, unsafeAfter } = searched(text);
    expect(found.steps.map((s) => s.problem.code)).toContain('crib-reach');
    expect(found.left).toEqual([]);
    expect(unsafeAfter).toEqual([]);
    expect(textAfter).toBe(text);
  });

  it('changes nothing where nothing is unsafe', () => {
    const { plan: found } = searched(scaleHousePlan());
    expect(found).toMatchObject({ steps: [], texts: {}, left: [] });
  });

  it('says what is left where no fix helps', () => {
    const { plan: found, unsafeAfter } = searched(scaleHousePlan().replace('19 ft 6 in', '80 ft'));
    expect(found.left.length).toBeGreaterThan(0);
    expect(new Set(unsafeAfter)).toEqual(new Set(found.left.map((p) => p.code)));
  });
});

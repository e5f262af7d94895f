import { inOneGo } from '@cribwright/engine/internal';
import { describe, expect, it } from 'vitest';
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

const plan = (
  courses: number,
  chocks = '1  chock  trailer both directions  crew 1  takes 1 min',
) => `use "library/vehicles.crib"

plan "Trailer by the scale house" {
  ground { surface asphalt; grade 1 % toward rear }
  vehicle trailer : VanTrailer53 {
    brakes set
    cargo 6,000 lb from 4 ft to 48 ft height 72 to 96 in
    coupled to tractor
  }
  vehicle tractor : DayCabTractor {
    at -16 ft, center
    brakes set
  }
  chock K2 { under tractor axle 2; holds both directions }
  chock K3 { under tractor axle 3; holds both directions }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    base      solid
    courses   ${courses}
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    base      solid
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    ${chocks}
    2  chock  tractor both directions  crew 1  takes 1 min
    3  build  A, B  crew 4  takes 5 min
  }
}
`;

describe('makeSafe', () => {
  it('finds the change that leaves nothing unsafe, and gives the workspace its own text again', () => {
    const text = plan(8);
    const { plan: found, textAfter, unsafeAfter } = searched(text);
    expect(found.steps.map((s) => s.problem.code)).toContain('crib-reach');
    expect(found.left).toEqual([]);
    expect(unsafeAfter).toEqual([]);
    expect(textAfter).toBe(text);
  });

  it('changes nothing where nothing is unsafe', () => {
    const { plan: found } = searched(plan(11));
    expect(found).toMatchObject({ steps: [], texts: {}, left: [] });
  });

  it('says what is left where no fix helps', () => {
    const { plan: found, unsafeAfter } = searched(plan(11).replace('19 ft 6 in', '80 ft'));
    expect(found.left.length).toBeGreaterThan(0);
    expect(new Set(unsafeAfter)).toEqual(new Set(found.left.map((p) => p.code)));
  });
});

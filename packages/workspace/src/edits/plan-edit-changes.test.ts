import { english } from '@cribwright/messages/testing';
import type { PlanEdit } from '@cribwright/model';
import { describe, expect, it } from 'vitest';
import { openWorkspace } from '../workspace/open-workspace.js';
import { applyChanges } from './apply-changes.js';
import { planEditChanges } from './plan-edit-changes.js';

const uri = 'memory:/plan.crib';
const text = `plan "x" {
  ground { surface asphalt }

  crib A {
    timber    Fir4x4 24 in long  // as carried
    layout    2 by 2
    courses   14                 // too many
  }

  strap T1 : RatchetStrap2in { from S1 base to S2 base }

  PairUnder North(reach = 24 in)

  steps {
    1  chock  trailer both directions  crew 1  takes 1 min
    2  build  A                  crew 2  after 1
  }
}
`;

/** The text after the edits, or why not. */
function after(...edits: PlanEdit[]): string {
  const workspace = openWorkspace({ files: { read: async () => undefined }, folders: [] });
  workspace.put(uri, text, 1);
  const block = workspace.bound(uri)?.blocks[0];
  if (!block) throw new Error('no plan');
  const made = planEditChanges({ block, text }, edits);
  if ('refused' in made) return english(made.refused);
  const changes = [...(made.changes[uri] ?? [])].sort((a, b) => b.span.start - a.span.start);
  return changes.reduce((t, { span, text: put }) => t.slice(0, span.start) + put + t.slice(span.end), text);
}
const at = (element: string, property?: string) =>
  property === undefined ? { element } : { element, property };

describe('set', () => {
  it('puts a value in place of the one that stands there, and leaves the comment', () => {
    expect(after({ kind: 'set', at: at('crib/A', 'courses'), text: '6' })).toBe(text.replace('14  ', '6  '));
  });
  it('adds a line that is not there, under its neighbors', () => {
    expect(after({ kind: 'set', at: at('crib/A', 'overhang'), text: '4 in' })).toBe(
      text.replace('// too many\n', '// too many\n    overhang  4 in\n'),
    );
  });
  it('keeps a block of one line on its line', () => {
    expect(after({ kind: 'set', at: at('tie/T1', 'tension'), text: '200 lb' })).toBe(
      text.replace('{ from S1 base to S2 base }', '{ from S1 base to S2 base; tension 200 lb }'),
    );
  });
  it('puts a clause of a step in place of its own, or at the end', () => {
    expect(after({ kind: 'set', at: at('step/2', 'after'), text: '1, 3' })).toBe(
      text.replace('after 1', 'after 1, 3'),
    );
    expect(after({ kind: 'set', at: at('step/2', 'takes'), text: '5 min' })).toBe(
      text.replace('after 1', 'after 1  takes 5 min'),
    );
    expect(after({ kind: 'set', at: at('step/1', 'crew'), text: '2' })).toBe(
      text.replace('crew 1', 'crew 2'),
    );
  });
});

describe('insert', () => {
  it('puts a block behind the last of its kind', () => {
    const strap = 'strap T2 : RatchetStrap2in { from S1 base to S3 base }';
    expect(after({ kind: 'insert', into: at('plan'), text: strap })).toBe(
      text.replace('S2 base }\n', `S2 base }\n  ${strap}\n`),
    );
  });
  it('puts a block of which there is none before the steps', () => {
    expect(after({ kind: 'insert', into: at('plan'), text: 'pad P1 {\n  under A\n}' })).toBe(
      text.replace('24 in)\n', '24 in)\n\n  pad P1 {\n    under A\n  }\n'),
    );
  });
  it('puts a line among those of a block', () => {
    expect(after({ kind: 'insert', into: at('crib/A'), text: 'base solid' })).toBe(
      text.replace('// too many\n', '// too many\n    base      solid\n'),
    );
  });
});

describe('remove', () => {
  it('takes a line out with its line break', () => {
    expect(after({ kind: 'remove', at: at('step/2') })).toBe(
      text.replace('    2  build  A                  crew 2  after 1\n', ''),
    );
  });
  it('takes a block out', () => {
    expect(after({ kind: 'remove', at: at('tie/T1') })).toBe(
      text.replace('  strap T1 : RatchetStrap2in { from S1 base to S2 base }\n', ''),
    );
  });
});

describe('refuses', () => {
  it('what comes from a pattern, and says so', () => {
    expect(after({ kind: 'set', at: at('crib/North.A', 'courses'), text: '6' })).toContain(
      'comes from a pattern',
    );
  });
  it('all of several edits where one cannot be made', () => {
    const good: PlanEdit = { kind: 'set', at: at('crib/A', 'courses'), text: '6' };
    expect(after(good, { kind: 'set', at: at('crib/Z', 'courses'), text: '6' })).not.toContain('crib A');
  });
});

describe('steps', () => {
  const steps = (...lines: string[]) =>
    text.replace(/steps \{[^}]*\}/, `steps {\n    ${lines.join('\n    ')}\n  }`);
  const [chock, build] = [
    'chock  trailer both directions  crew 1  takes 1 min',
    'build  A                  crew 2',
  ];

  it('appends to what a step works on, before its clauses', () => {
    expect(after({ kind: 'append', at: at('step/2'), text: 'B, C' })).toBe(
      text.replace('build  A', 'build  A, B, C'),
    );
  });
  it('puts new steps beside one, and numbers those after them anew', () => {
    const texts = ['size up  trailer', 'chock  car forward'];
    expect(after({ kind: 'insert steps', at: at('step/1'), where: 'before', texts })).toBe(
      steps('1  size up  trailer', '2  chock  car forward', `3  ${chock}`, `4  ${build}  after 3`),
    );
    expect(after({ kind: 'insert steps', at: at('step/2'), where: 'behind', texts: ['check  A'] })).toBe(
      steps(`1  ${chock}`, `2  ${build}  after 1`, '3  check  A'),
    );
  });
  it('moves a step, and names it by its new number where another waits for it', () => {
    expect(after({ kind: 'move step', at: at('step/1'), where: 'behind', step: at('step/2') })).toBe(
      steps(`1  ${build}  after 2`, `2  ${chock}`),
    );
    expect(after({ kind: 'move step', at: at('step/2'), where: 'before', step: at('step/1') })).toBe(
      steps(`1  ${build}  after 2`, `2  ${chock}`),
    );
  });
  it('refuses where there is no such step', () => {
    expect(after({ kind: 'append', at: at('step/9'), text: 'B' })).toContain('comes from a pattern');
    expect(after({ kind: 'move step', at: at('step/1'), where: 'before', step: at('crib/A') })).toContain(
      'not a step of this plan',
    );
  });
});

describe('place', () => {
  const move = (line: string, to: { x: number; y: number }) => {
    const written = text.replace('layout    2 by 2\n', `layout    2 by 2\n    at        ${line}\n`);
    const workspace = openWorkspace({ files: { read: async () => undefined }, folders: [] });
    workspace.put(uri, written, 1);
    const block = workspace.bound(uri)?.blocks[0];
    if (!block) throw new Error('no plan');
    const from = { x: 20 * 0.3048, y: -3 * 0.3048 };
    const edit: PlanEdit = { kind: 'place', at: at('crib/A', 'at'), from, to, text: 'elsewhere' };
    const made = planEditChanges({ block, text: written }, [edit]);
    if ('refused' in made) return english(made.refused);
    const after = applyChanges(written, made.changes[uri] ?? []);
    return /at {8}(.*)/.exec(after)?.[1];
  };
  const back = { x: 21 * 0.3048, y: -3 * 0.3048 };

  it('changes the distance alone where it is measured from something else than the front', () => {
    expect(move('33 ft from the rear, driver side 3 ft', back)).toBe('32 ft from the rear, driver side 3 ft');
    expect(move('6 ft behind axle 1, driver side 3 ft', back)).toBe('7 ft behind axle 1, driver side 3 ft');
    expect(move('33 ft from the rear, driver side 3 ft', { ...back, x: 20 * 0.3048, y: 0 })).toBe(
      '33 ft from the rear, center',
    );
  });
  it('is written anew where it is measured from the front, or where it is not known which way its distance grows', () => {
    expect(move('6 ft behind car axle 1, driver side 3 ft', back)).toBe('elsewhere');
    expect(move('20 ft, driver side 3 ft', back)).toBe('elsewhere');
  });
});

describe('the type of a support', () => {
  it('is what stands behind its colon', () => {
    expect(after({ kind: 'set', at: at('tie/T1', 'type'), text: 'RatchetStrap4in' })).toBe(
      text.replace('RatchetStrap2in', 'RatchetStrap4in'),
    );
  });
});

import { english } from '@cribwright/messages/testing';
import { describe, expect, it } from 'vitest';
import { openWorkspace } from './open-workspace.js';

const folder = 'file:///alder-ridge';
const plan = (inner: string) => `use "library/vehicles.crib"
use "../caches/a.crib"
plan "P" {
  ground { surface asphalt }
  responding A
  vehicle trailer : VanTrailer53 { cargo 20,000 lb from 4 ft to 48 ft }
${inner}
}
`;

async function opened(files: Record<string, string>, asked = `${folder}/plans/p.crib`) {
  const texts = new Map(Object.entries(files).map(([path, text]) => [`${folder}/${path}`, text]));
  const workspace = openWorkspace({ files: { read: async (u) => texts.get(u) }, folders: [folder] });
  await workspace.load(asked);
  return { workspace, texts, uri: asked };
}

const text = (w: Awaited<ReturnType<typeof opened>>) =>
  w.workspace
    .check(w.uri)
    .problems.filter((p) => p.source === 'text')
    .map((p) => p.code);

describe('a workspace', () => {
  it('reads what a file uses, beside it or in a folder above', async () => {
    const w = await opened({ 'plans/p.crib': plan(''), 'caches/a.crib': 'cache A { staffing 4 }' });
    expect(text(w)).toEqual([]);
    const above = await opened(
      {
        'plans/deep/p.crib': plan('').replace('../caches', 'caches'),
        'caches/a.crib': 'cache A { staffing 4 }',
      },
      `${folder}/plans/deep/p.crib`,
    );
    expect(text(above)).toEqual([]);
  });

  it('lets an open text win over the file, and follows its edits into the files that use it', async () => {
    const w = await opened({ 'plans/p.crib': plan(''), 'caches/a.crib': 'cache A { staffing 4 }' });
    w.workspace.check(w.uri);
    w.workspace.put(`${folder}/caches/a.crib`, 'cache B { staffing 4 }', 2);
    expect(w.workspace.dependents(`${folder}/caches/a.crib`)).toEqual([w.uri]);
    expect(text(w)).toContain('unknown-name');
    w.workspace.put(`${folder}/caches/a.crib`, 'cache A { staffing 4 }', 3);
    expect(text(w)).toEqual([]);
  });

  it('forgets a dropped file and reads it again', async () => {
    const w = await opened({ 'plans/p.crib': plan(''), 'caches/a.crib': 'cache A { staffing 4 }' });
    w.texts.delete(`${folder}/caches/a.crib`);
    w.workspace.drop(`${folder}/caches/a.crib`);
    await w.workspace.load(w.uri);
    expect(text(w)).toContain('use-not-found');
    w.texts.set(`${folder}/caches/a.crib`, 'cache A { staffing 4 }');
    w.workspace.drop(`${folder}/caches/a.crib`);
    await w.workspace.load(w.uri);
    expect(text(w)).toEqual([]);
  });

  it('gives the version of the text that it speaks of, also where only the version changed', async () => {
    const w = await opened({});
    w.workspace.put(w.uri, 'cache A { staffing 4 }', 7);
    expect(w.workspace.check(w.uri).version).toBe(7);
    w.workspace.put(w.uri, 'cache A { staffing 4 }', 8);
    expect(w.workspace.check(w.uri).version).toBe(8);
    expect(w.workspace.bound(w.uri)?.version).toBe(8);
  });

  it('works nothing out anew for an edit in a comment', async () => {
    const w = await opened({ 'plans/p.crib': plan(''), 'caches/a.crib': 'cache A { staffing 4 }' });
    const before = w.workspace.check(w.uri).plans[0]?.analysis;
    w.workspace.put(w.uri, `// a note\n${plan('')}`, 2);
    const after = w.workspace.check(w.uri);
    expect(after.plans[0]?.analysis).toBe(before);
    expect(after.plans[0]?.places.plan?.range.start.line).toBe(3);
  });

  it('knows no plan of a file that is not there', async () => {
    const w = await opened({});
    expect(w.workspace.bound(w.uri)).toBeUndefined();
    expect(w.workspace.check(w.uri)).toMatchObject({ state: 'no plan', problems: [], plans: [] });
  });

  it('marks a plan as partial, and its state as errors, where a line could not be read', async () => {
    const w = await opened({
      'plans/p.crib': plan('  chock K1 { under trailr }'),
      'caches/a.crib': 'cache A { staffing 4 }',
    });
    const checked = w.workspace.check(w.uri);
    expect(checked.state).toBe('errors');
    expect(checked.plans[0]?.partial).toBe(true);
  });

  it('puts a finding on the line that causes it and turns its fix into text', async () => {
    const w = await opened({
      'plans/p.crib': plan(`  crib A {
    timber Fir4x4 24 in long
    layout 2 by 2
    courses 14
    wedges 1 pair
    at 19 ft 6 in, driver side 3 ft 6.75 in
    captures rail
  }`),
      'caches/a.crib': 'cache A { staffing 4 }',
    });
    const finding = w.workspace.check(w.uri).problems.find((p) => p.code === 'crib-height');
    const source = w.workspace.bound(w.uri)?.text ?? '';
    expect(source.slice(finding?.span.start, finding?.span.end)).toBe('courses 14');
    expect(english(finding?.message)).toContain('49 in');
    expect(english(finding?.message)).toContain('24 in');
    expect(finding?.fixes[0]?.edits[w.uri]?.map((e) => e.text)).toEqual(['6']);
  });
});

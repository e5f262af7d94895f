import { existsSync, readFileSync } from 'node:fs';
import { edited, most } from '@cribwright/syntax/testing';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openWorkspace } from './open-workspace.js';
import type { Checked } from './workspace.js';

const examples = new URL('../../../../examples/', import.meta.url);
const folder = 'file:///alder-ridge/';
const uri = `${folder}plans/several.crib`;
const read = (of: string): string | undefined => {
  const path = new URL(of.slice(folder.length), examples);
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
};

const files = ['suv-on-step-chocks', 'si-trailer', 'trailer-on-car'].map(
  (name) => read(`${folder}plans/${name}.crib`) ?? '',
);
const lines = files.flatMap((text) => text.split('\n'));
const uses = [...new Set(lines.filter((line) => line.startsWith('use ')))];
const plans = files.map((text) => text.slice(text.indexOf('\nplan ') + 1));
/** The last stands on a pattern of this file. */
const onPattern = plans[2]?.replace(/^( {2}strut S1 )/m, '  Block  Own(rail = trailer rail)\n\n$1');
/** Plans side by side, one of them twice, and a pattern of their own between them. */
const body = `
${plans[0]}
pattern Block(rail: part) {
  crib L {
    timber    Fir4x4 24 in long
    layout    2 by 2
    courses   9
    wedges    4 pairs
    at        40 ft, driver side 3 ft
    captures  rail
  }
}

${plans[1]}
// What stands here belongs to no plan.
${onPattern}
${plans[0]?.replace(/plan "/, 'plan "Again, ')}`;
const several = `${uses.join('\n')}\n${body}`;

async function opened(text: string) {
  const workspace = openWorkspace({
    files: { read: async (of) => read(of) },
    folders: [folder.slice(0, -1)],
    // Without loads: what an edit changes in the text is what is asked about here.
    timeLimit: { now: () => 0, over: -1 },
  });
  workspace.put(uri, text, 1);
  await workspace.load(uri);
  return workspace;
}

const said = ({ problems, plans: replies, state }: Checked): string =>
  JSON.stringify([state, problems.map(({ finding: _, ...told }) => told), replies]);

const number = fc.nat(most - 1);
const someEdit = fc.tuple(number, number, number, number);

it('says of an edited file of several plans what it would say of the same text for the first time', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(someEdit, { minLength: 1, maxLength: 4 }), async (edits) => {
      const workspace = await opened(several);
      workspace.check(uri);
      // Hints at the names of files speak of those that were met so far: the lines that use them stay.
      let now = body;
      for (const [i, edit] of edits.entries()) {
        now = edited(now, edit);
        const text = `${uses.join('\n')}\n${now}`;
        workspace.put(uri, text, i + 2);
        await workspace.load(uri);
        expect(said(workspace.check(uri))).toBe(said((await opened(text)).check(uri)));
      }
    }),
    { numRuns: 8 },
  );
});

it('keeps every plan but the one that was edited, whatever stands around it', async () => {
  const workspace = await opened(several);
  const before = workspace.check(uri);
  expect(before.plans.map(({ plan }) => plan.cribs.some((c) => c.name.endsWith('L')))).toEqual([
    false,
    false,
    true,
    false,
  ]);
  expect(before.problems.filter((p) => p.severity === 'danger' && p.source === 'text')).toEqual([]);
  const weighed = several.replace(/([\d,]+) to ([\d,]+) lb/, '$1 to 50,001 lb');
  const changed = (text: string): readonly number[] => {
    workspace.put(uri, text, 2);
    const now = workspace.check(uri).plans;
    return now.flatMap(({ plan, analysis }, i) =>
      plan === before.plans[i]?.plan && analysis === before.plans[i]?.analysis ? [] : [i],
    );
  };
  expect(changed(`// First of all.\n${several}`)).toEqual([]);
  expect(changed(several.replace('// What stands', '// Whatever stands'))).toEqual([]);
  expect(weighed).not.toBe(several);
  expect(changed(weighed)).toHaveLength(1);
  expect(changed(several.replace('courses   9', 'courses   8'))).not.toEqual([]);
});

it('works nothing out anew for another title', async () => {
  const workspace = await opened(several);
  const [before] = workspace.check(uri).plans;
  workspace.put(uri, several.replace(/plan "/, 'plan "Once more, '), 2);
  const [now] = workspace.check(uri).plans;
  expect(now?.analysis).toEqual({
    ...before?.analysis,
    plan: { ...before?.analysis.plan, title: `Once more, ${before?.plan.title}` },
  });
  expect(now?.analysis.findings).toBe(before?.analysis.findings);
});

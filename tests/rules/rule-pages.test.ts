import { english } from '@cribwright/messages/testing';
import { rulePage, rules } from '@cribwright/rules';
import { openWorkspace, type Problem, positionOf } from '@cribwright/workspace';
import { describe, expect, it } from 'vitest';
import { type Fence, fencesOf, missingHeadings } from './page.js';

const uri = 'file:///page/plan.crib';
const usual = ['library/vehicles.crib', 'library/gear.crib'];

/** The checks of one text. Pages may leave out the `use` of the usual library files, and ground that is plain asphalt. */
async function check(text: string) {
  const uses = usual.filter((path) => !text.includes(`"${path}"`)).map((path) => `use "${path}"\n`);
  const grounded = /^\s*ground\b/m.test(text)
    ? text
    : text.replace(/^(plan [^{\n]*\{)/m, '$1 ground { surface asphalt }');
  const whole = uses.join('') + grounded;
  const workspace = openWorkspace({
    files: { read: async () => undefined },
    folders: ['file:///page'],
    today: '2026-11-25',
    push: true,
  });
  workspace.put(uri, whole, 1);
  await workspace.load(uri);
  const checked = workspace.check(uri);
  const lineOf = (p: Problem) => positionOf(whole, p.span.start).line - uses.length;
  return { ...checked, text: whole, lineOf };
}

const linesOf = (text: string) =>
  text.split('\n').map((line) =>
    line
      .replace(/\s*\/\/.*$/, '')
      .replace(/\s+/g, ' ')
      .trim(),
  );

const applied = (text: string, problem: Problem): readonly string[] =>
  problem.fixes.map((fix) =>
    [...(fix.edits[uri] ?? [])]
      .sort((a, b) => b.span.start - a.span.start)
      .reduce((now, edit) => now.slice(0, edit.span.start) + edit.text + now.slice(edit.span.end), text),
  );

describe.each(rules.map((r) => r.id))('%s', (id) => {
  const page = rulePage(id, 'en') ?? '';
  const fences = fencesOf(page);
  const plans = (under: string): readonly Fence[] =>
    fences.filter((f) => f.under === under && f.kind === 'plan');

  it('says all that a page must say', () => {
    expect(missingHeadings(page)).toEqual([]);
    expect(plans('Unsafe').length).toBeGreaterThan(0);
    expect(plans('Safe').length).toBeGreaterThan(0);
  });

  it.each(plans('Unsafe').map((f, i) => [i + 1, f] as const))(
    'finds what unsafe plan %i marks, where it is marked',
    async (_n, fence) => {
      const { problems, lineOf } = await check(fence.text);
      expect(
        problems.filter((p) => p.source === 'text' && p.severity === 'danger').map((p) => english(p.message)),
      ).toEqual([]);
      const marks = fence.expected.filter((e) => e.rule === id);
      expect(marks.length).toBeGreaterThan(0);
      const found = problems.filter((p) => p.code === id).map((p) => lineOf(p));
      expect([...new Set(found)].sort((a, b) => a - b)).toEqual(marks.map((m) => m.line));
      for (const other of fence.expected.filter((e) => e.rule !== id)) {
        expect(problems.map((p) => `${p.code} on line ${lineOf(p)}`)).toContain(
          `${other.rule} on line ${other.line}`,
        );
      }
    },
  );

  it.each(plans('Safe').map((f, i) => [i + 1, f] as const))(
    'finds nothing of the kind in safe plan %i',
    async (_n, fence) => {
      const { problems, plans: read } = await check(fence.text);
      expect(read.length).toBe(1);
      expect(
        problems.filter((p) => p.source === 'text' && p.severity === 'danger').map((p) => english(p.message)),
      ).toEqual([]);
      expect(problems.filter((p) => p.code === id).map((p) => english(p.message))).toEqual([]);
    },
  );

  const fixed = fences.filter((f) => f.kind === 'fixed');
  if (fixed.length === 0) return;
  it('mends the plan before it as the fixed lines show', async () => {
    for (const fence of fixed) {
      const before = fences[fences.indexOf(fence) - 1];
      const { problems, text } = await check(before?.text ?? '');
      const mended = problems.filter((p) => p.code === id).flatMap((p) => applied(text, p));
      const wanted = linesOf(fence.text).filter((line) => line !== '');
      const match = mended.find((m) => wanted.every((line) => linesOf(m).includes(line)));
      expect(match, `no fix gives: ${wanted.join(' / ')}\n${mended.join('\n---\n')}`).toBeDefined();
      const after = await check(match ?? '');
      expect(after.problems.filter((p) => p.code === id).length).toBeLessThan(
        problems.filter((p) => p.code === id).length,
      );
    }
  });
});

import { readFileSync, writeFileSync } from 'node:fs';
import { type Hole, type Message, wordsIn } from '@cribwright/messages';
import { type Problem, positionOf, type Workspace } from '@cribwright/workspace';
import { beforeAll, describe, expect, it } from 'vitest';
import { afterFix, answer, faultsOf, inWords, openFolder, slipped } from './answer.js';
import { basePlan } from './base-plan.js';
import { corpus } from './corpus/index.js';
import { goldenText } from './golden-text.js';

/**
 * Slips that people make who never wrote a plan before. Each must be answered by one error, at the slip, with what would
 * be right, and by nothing else: no finding that follows from what could not be read, and nothing that looks safe.
 * `UPDATE_GOLDEN=1 npm run unit -- tests/slips` writes what is said now; read the difference before committing it.
 */
const update = process.env.UPDATE_GOLDEN === '1';

let workspace: Workspace;
beforeAll(async () => {
  workspace = await openFolder();
});

it('starts from a plan in which nothing is unsafe', () => {
  const { checked } = answer(workspace, basePlan);
  expect(checked.problems).toEqual([]);
  expect(checked.plans.map((p) => p.analysis.expectations.map((e) => e.held))).toEqual([[true]]);
});

it('holds at least 150 slips', () => {
  const titles = corpus.flatMap((g) => g.slips.map((s) => `${g.name}: ${s.title}`));
  expect(titles.length).toBeGreaterThanOrEqual(150);
  expect(new Set(titles).size).toBe(titles.length);
});

describe.each(corpus)('$name', (group) => {
  it.each(group.slips)('answers as wanted: $title', (slip) => {
    expect(faultsOf(workspace, slip)).toEqual([]);
  });

  it.each(group.slips)('says the same with Windows line ends: $title', (slip) => {
    const { text } = slipped(slip);
    const plain = answer(workspace, text).checked.problems.map((p) => said(p, text));
    const windows = text.replaceAll('\n', '\r\n');
    const { checked, errors } = answer(workspace, windows);
    expect(checked.problems.map((p) => said(p, windows))).toEqual(plain);
    for (const p of errors) expect(afterFix(windows, p) ?? '').not.toMatch(/[^\r]\n/);
  });

  it.each(group.slips)('says it in Spanish: $title', (slip) => {
    const { errors } = answer(workspace, slipped(slip).text);
    for (const p of errors) {
      for (const m of [p.message, ...p.fixes.map((f) => f.title), ...p.related.map((r) => r.message)]) {
        expect(wordsIn('es', 'us').message(m)).not.toBe(wordsIn('en', 'us').message(m));
        expect(wordsIn('es', 'us').message(withoutNames(m))).not.toMatch(english);
      }
    }
  });

  if (group.accepted) {
    it.each(group.accepted)('takes as right: $title', (form) => {
      const { errors, checked } = answer(workspace, slipped(form).text);
      expect(errors.map((p) => inWords(p))).toEqual([]);
      expect(checked.plans.map((p) => p.analysis.expectations.map((e) => e.held))).toEqual([[true]]);
    });
  }

  it('reads as its golden file', () => {
    const path = new URL(`../golden/slips/${group.name}.md`, import.meta.url);
    const now = goldenText(workspace, group);
    if (update) writeFileSync(path, now);
    expect(now).toBe(readFileSync(path, 'utf8'));
  });
});

describe('a file that is no plan', () => {
  it.each([
    ['saved as UTF-16', [...basePlan].map((c) => `${c}\0`).join(''), 'UTF-16'],
    ['saved as UTF-16, high byte first', [...basePlan].map((c) => `\0${c}`).join(''), 'UTF-16'],
    ['saved as Latin-1, in a comment', basePlan.replace('north lot', 'north l\ufffdt'), 'UTF-8'],
    ['saved as Latin-1, in a text', basePlan.replace('paper rolls', 'pap\ufffdr'), 'UTF-8'],
  ])('says so once: %s', (_what, text, says) => {
    const { checked, errors } = answer(workspace, text);
    expect(errors.map((p) => inWords(p).includes(says))).toEqual([true]);
    expect(checked.state).toBe('errors');
    expect(checked.plans.every((p) => p.partial && p.analysis.expectations.every((e) => !e.held))).toBe(true);
  });

  it.each([
    ['empty', '', 'empty'],
    ['of line breaks alone', '\n\n', 'empty'],
    ['of comments alone', '// north lot\n', 'only comments'],
  ])('warns once, and holds nothing for checked: %s', (_what, text, says) => {
    const { checked } = answer(workspace, text);
    expect(checked.problems.map((p) => [p.severity, inWords(p).includes(says)])).toEqual([['warning', true]]);
    expect(checked).toMatchObject({ state: 'no plan', plans: [] });
  });

  it('offers to start a plan', () => {
    const [problem] = answer(workspace, '').checked.problems;
    const text = problem && afterFix('', problem);
    expect(text).toContain('plan "');
    expect(answer(workspace, text ?? '').errors.map((p) => p.code)).toEqual([
      'vehicle-missing',
      'plan-unchecked',
    ]);
  });
});

const said = (p: Problem, text: string) => {
  const { line, character } = positionOf(text, p.span.start);
  return `${line + 1}:${character + 1} ${p.severity} ${p.code} ${inWords(p)}`;
};

/** Words that no Spanish sentence has. */
const english = /\b(?:the|is|are|not|this|write|line|with|here|of|and|has|goes|after|needs)\b/i;

/** A message with its names left out: words of the plan language are the same everywhere. */
const withoutNames = (m: Message): Message => ({
  ...m,
  holes: Object.fromEntries(Object.entries(m.holes).map(([key, hole]) => [key, withoutName(hole)])),
});

function withoutName(hole: Hole): Hole {
  if (typeof hole !== 'object' || !('kind' in hole)) return hole;
  if (hole.kind === 'name') return { ...hole, text: '·' };
  if (hole.kind === 'list') return { ...hole, items: hole.items.map(withoutName) };
  return hole.kind === 'message' ? withoutNames(hole) : hole;
}

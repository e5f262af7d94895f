import { applyChanges } from '@cribwright/workspace/internal';
import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { describe, expect, it } from 'vitest';
import { CodeActionTriggerKind } from 'vscode-languageserver';
import { rangeOf, spanOf } from '../context/positions.js';
import { atCursor } from '../testing/context-of.js';
import { fixAll, makeSafeAction, quickFixes } from './code-action.js';
import { otherBuilds } from './other-builds.js';

async function opened(text: string, mark: string) {
  const { desk, file } = await atCursor(`<|>${text}`, { 'fleet.crib': fleet });
  const checked = await desk.checked(file.uri);
  if (!checked) throw new Error('not checked');
  const start = text.indexOf(mark);
  return { desk, file, checked, range: rangeOf(file, { start, end: start + mark.length }) };
}

it('offers the number of courses that holds, worked out, and it holds', async () => {
  const { desk, file, checked, range } = await opened(trailerPlan, 'courses   14');
  const actions = (await quickFixes(desk, file, checked, range)).filter(
    (a) => a.diagnostics?.[0]?.code === 'crib-height',
  );
  expect(actions.length).toBeGreaterThan(0);
  const edits = actions[0]?.edit?.changes?.[file.uri] ?? [];
  const after = applyChanges(
    file.text,
    edits.map((e) => ({ span: spanOf(file, e.range), text: e.newText })),
  );
  const again = await opened(after, 'courses');
  expect(again.checked.problems.map((p) => p.code)).not.toContain('crib-height');
});

describe('a fix that is worked out', () => {
  /** Under a rail alone, it stands too high; the gap to the rail is closed as it is. */
  const tall = trailerPlan
    .replace('36,000 lb', '12,000 lb')
    .replace('courses   14', 'base      solid\n    courses   11\n    overhang  4 in\n    wedges    4 pairs')
    .replace('21 ft, driver side 3 ft 4 in', '20 ft 6 in, driver side 3 ft 6.75 in');

  it('says what it does, and is not shown where another does not trade one danger for the next', async () => {
    const { desk, file, checked, range } = await opened(tall, 'courses   11');
    const actions = (await quickFixes(desk, file, checked, range)).filter(
      (a) => a.diagnostics?.[0]?.code === 'crib-height',
    );
    expect(actions.map((a) => a.title)).toEqual([
      'Capture all 4 contacts: rail, joists (height limit: 24 in to 48 in)',
    ]);
    expect(actions.some((a) => a.isPreferred)).toBe(false);
  });

  it('says what else it makes unsafe where nothing better is at hand', async () => {
    const alone = tall.replace('20 ft 6 in, driver side 3 ft 6.75 in', '20 ft, driver side 3 ft 6.75 in');
    const { desk, file, checked, range } = await opened(alone, 'courses   11');
    const actions = (await quickFixes(desk, file, checked, range)).filter(
      (a) => a.diagnostics?.[0]?.code === 'crib-height',
    );
    expect(actions.map((a) => a.title)).toEqual([
      'Use 6 courses (height: 38 1/2 in to 21 in). New unsafe findings: coupling-missing on the trailer, crib-reach on crib A',
    ]);
    expect(actions.some((a) => a.isPreferred)).toBe(false);
  });

  it('is tried out no further once the question is withdrawn', async () => {
    const { desk, file, checked, range } = await opened(tall, 'courses   11');
    let pauses = 0;
    const token = {
      get isCancellationRequested() {
        return pauses > 0;
      },
      onCancellationRequested: () => ({ dispose: () => undefined }),
    };
    const counted = {
      ...desk,
      pause: async () => {
        pauses++;
      },
    };
    await quickFixes(counted, file, checked, range, { token });
    expect(pauses).toBe(1);
  });

  it('says it in the language of the reader', async () => {
    const { desk, file } = await atCursor(`<|>${tall}`, { 'fleet.crib': fleet }, { locale: 'es' });
    const checked = await desk.checked(file.uri);
    const start = tall.indexOf('courses   11');
    const range = rangeOf(file, { start, end: start + 1 });
    const titles = (checked ? await quickFixes(desk, file, checked, range) : []).map((a) => a.title);
    expect(
      titles.some((t) => t.startsWith('Capturar los 4 contactos: rail, joists (límite de altura: de')),
    ).toBe(true);
  });

  it('is not tried out, nor preferred, at a step of the cursor', async () => {
    const { desk, file, checked, range } = await opened(tall, 'courses   11');
    const copyWith = () => {
      throw new Error('tried out');
    };
    const context = { diagnostics: [], triggerKind: CodeActionTriggerKind.Automatic };
    const actions = await quickFixes({ ...desk, copyWith }, file, checked, range, { context });
    expect(actions.map((a) => a.title)).toContain('Use 6 courses');
    expect(actions.some((a) => a.isPreferred)).toBe(false);
  });
});

it('offers the closest name where one is misspelled', async () => {
  const { desk, file, checked, range } = await opened(trailerPlan.replace('Fir4x4', 'Fri4x4'), 'Fri4x4');
  const titles = (await quickFixes(desk, file, checked, range)).map((a) => a.title);
  expect(titles.some((t) => t.includes('Fir4x4'))).toBe(true);
});

it('offers nothing where nothing is wrong', async () => {
  const { desk, file, checked, range } = await opened(trailerPlan, 'layout    2 by 2');
  expect(await quickFixes(desk, file, checked, range)).toEqual([]);
});

it('puts right all that has one safe answer, in one action', async () => {
  const text = `use "library/gear.crib"\nuse "library/cargo.crib"\n${trailerPlan}`;
  const { desk, file, checked } = await opened(text, 'crib');
  const [action] = fixAll(desk, file, checked);
  const edits = action?.edit?.changes?.[file.uri] ?? [];
  const spans = edits.map((e) => spanOf(file, e.range)).sort((a, b) => a.start - b.start);
  for (const [i, span] of spans.entries()) expect(span.start).toBeGreaterThanOrEqual(spans[i - 1]?.end ?? 0);
  const after = applyChanges(
    file.text,
    edits.map((e) => ({ span: spanOf(file, e.range), text: e.newText })),
  );
  const left = (await opened(after, 'crib')).checked.problems;
  expect(after).toBe(trailerPlan);
  expect(left.length).toBe(checked.problems.length - 2);
});

it('offers other ways to build a crib, each of which holds', async () => {
  const text = trailerPlan
    .replace('from 4 ft to 48 ft', 'from 4 ft to 48 ft height 72 in')
    .replace('courses   14', 'base      solid\n    courses   11\n    wedges    4 pairs')
    .replace('21 ft, driver side 3 ft 4 in', '20 ft 6 in, driver side 3 ft 6.75 in')
    .replace('captures  rail', 'captures  rail, joists');
  const { desk, file, checked } = await opened(text, 'crib A');
  const builds = await otherBuilds(desk, file, checked, text.indexOf('crib A') + 2);
  expect(builds.length).toBeGreaterThan(0);
  for (const build of builds) {
    const edits = build.edit?.changes?.[file.uri] ?? [];
    const after = applyChanges(
      file.text,
      edits.map((e) => ({ span: spanOf(file, e.range), text: e.newText })),
    );
    expect(after).not.toBe(text);
    const codes = (await opened(after, 'crib')).checked.problems
      .filter((p) => p.severity === 'danger')
      .map((p) => p.code);
    expect(codes).not.toContain('crib-height');
    expect(codes).not.toContain('crib-load');
    expect(codes).not.toContain('crib-reach');
  }
});

it('offers no other builds outside a crib', async () => {
  const { desk, file, checked } = await opened(trailerPlan, 'ground');
  expect(await otherBuilds(desk, file, checked, trailerPlan.indexOf('ground') + 2)).toEqual([]);
});

describe('Make This Plan Safe', () => {
  it('is offered on the first line of a plan in which something is unsafe', async () => {
    const { desk, file, checked } = await opened(trailerPlan, 'crib');
    const [action, ...more] = makeSafeAction(desk, file, checked, trailerPlan.indexOf('plan "') + 2);
    expect(more).toEqual([]);
    expect(action).toMatchObject({
      title: 'Make This Plan Safe',
      command: { command: 'cribwright.makeSafe', arguments: [file.uri] },
    });
    expect(makeSafeAction(desk, file, checked, trailerPlan.indexOf('courses'))).toEqual([]);
  });

  it('is not offered where nothing is', async () => {
    const { desk, file, checked } = await opened('plan "x" {\n}\n', 'plan');
    const safe = { ...checked, problems: [] };
    expect(makeSafeAction(desk, file, safe, 2)).toEqual([]);
  });
});

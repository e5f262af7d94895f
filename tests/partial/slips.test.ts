import {
  type CheckReport,
  exitCode,
  expectationsHeld,
  fileReport,
  sarifReport,
  toShow,
} from '@cribwright/cli';
import { fieldSheet } from '@cribwright/drawing';
import { lensesOf } from '@cribwright/server';
import { openWorkspace, type PlanReply, type Workspace } from '@cribwright/workspace';
import { beforeAll, describe, expect, it } from 'vitest';
import { safeFiles } from './files.js';
import { placesIn, slipsOf } from './slips.js';

/**
 * Every line that the schema knows, in every way in which it may slip, in the plan itself and in a file that the plan
 * uses. The slips are made from the schema, so that a line that is new there is tried too.
 */
const folder = 'file:///alder-ridge';
const plan = `${folder}/plan.crib`;
const homes = {
  // Before the line that says what the plan expects.
  plan: { file: 'plan.crib', before: '  expect safe' },
  file: { file: 'fleet.crib', before: 'vehicle type CountyFlatbed' },
} as const;

let workspace: Workspace;
beforeAll(async () => {
  workspace = openWorkspace({
    files: { read: async (uri) => safeFiles[uri.slice(folder.length + 1)] },
    folders: [folder],
    today: '2026-11-25',
  });
  await workspace.load(plan);
});

let version = 1;
function seenWith(home: keyof typeof homes, inserted: string): Seen {
  const { file, before } = homes[home];
  const text = safeFiles[file] ?? '';
  workspace.put(
    `${folder}/${file}`,
    text.replace(before, () => `${inserted}\n${before}`),
    ++version,
  );
  const seen = see();
  workspace.put(`${folder}/${file}`, text, ++version);
  return seen;
}

interface Seen {
  readonly partial: boolean;
  /** What looks as if all were well, by where it shows. */
  readonly clean: readonly string[];
}

function see(): Seen {
  const checked = workspace.check(plan);
  const bound = workspace.bound(plan);
  if (bound === undefined) throw new Error('the plan was not read');
  const report: CheckReport = {
    files: [
      {
        ...fileReport(checked, { pathOf: (uri) => uri, textOf: (uri) => workspace.bound(uri)?.text ?? '' }),
        lessons: [],
      },
    ],
    unreadable: [],
  };
  const lenses = lensesOf({ locale: 'en', settings: { units: 'plan' } }, bound, {
    ...checked,
    pending: undefined,
  });
  const sarif = JSON.parse(sarifReport(report, [])).runs[0];
  const looks = {
    'check ends with 0': exitCode(report) === 0,
    'test ends with 0': expectationsHeld(report) === 0,
    'an expectation holds': checked.plans.some((p) => p.analysis.expectations.some((e) => e.held)),
    'the log says that all went well': sarif.invocations[0].executionSuccessful,
    'the log has no error': sarif.results.every((r: { level: string }) => r.level !== 'error'),
    'the lens is clean': lenses.some((l) => /nothing (else )?unsafe/.test(l.command?.title ?? '')),
    'the sheet has no mark': checked.plans.some((p) => !isMarked(p)),
  };
  return {
    partial: checked.plans.every((p) => p.partial),
    clean: Object.entries(looks).flatMap(([what, is]) => (is ? [what] : [])),
  };
}

/** Pages are the same where the plan and what the checks say of it are, but for what could not be read. */
const marked = new Map<object, boolean>();
function isMarked(reply: PlanReply): boolean {
  const { analysis } = toShow(reply);
  if (analysis.partial !== true || analysis.unread?.length === 0)
    return fieldSheet(reply.plan, analysis).includes('NOT READ WHOLE');
  const is = marked.get(reply.analysis) ?? fieldSheet(reply.plan, analysis).includes('NOT READ WHOLE');
  marked.set(reply.analysis, is);
  return is;
}

it('tells a clean plan from one that is not', () => {
  expect(see()).toEqual({
    partial: false,
    clean: [
      'check ends with 0',
      'test ends with 0',
      'an expectation holds',
      'the log says that all went well',
      'the log has no error',
      'the lens is clean',
      'the sheet has no mark',
    ],
  });
});

describe.each(['plan', 'file'] as const)('a slip in a line of a %s', (home) => {
  const places = placesIn(home);

  it('is tried in every block that may stand there', () => {
    expect(places.length).toBeGreaterThan(100);
  });

  it('is the only fault of most of them', () => {
    const whole = places.filter(
      ({ around, line }) =>
        !seenWith(
          home,
          around.replace('@', () => line),
        ).partial,
    );
    expect(whole.length).toBeGreaterThan(places.length * 0.4);
  });

  it('never leaves anything that looks clean', () => {
    const faults = places.flatMap(({ name, around, line }) =>
      slipsOf(line).flatMap((slip) => {
        const { partial, clean } = seenWith(
          home,
          around.replace('@', () => slip),
        );
        return partial && clean.length === 0 ? [] : [{ name, slip, partial, clean }];
      }),
    );
    expect(faults).toEqual([]);
  });
});

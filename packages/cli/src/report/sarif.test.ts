import { name } from '@cribwright/messages';
import { expect, it } from 'vitest';
import { sampleReport, tooHigh } from '../testing/sample-report.js';
import { sarifReport } from './sarif.js';

const rules = [{ id: 'crib-height', title: 'Crib too high', protects: 'A tall crib sways and falls.' }];
const log = (report = sampleReport([tooHigh])) => JSON.parse(sarifReport(report, rules)).runs[0];

it('gives the rule with its page, and the result with its place', () => {
  const run = log();
  expect(run.tool.driver.rules).toEqual([
    {
      id: 'crib-height',
      shortDescription: { text: 'Crib too high' },
      fullDescription: { text: 'A tall crib sways and falls.' },
      helpUri: 'cribwright:/rules/crib-height.md',
    },
  ]);
  expect(run.results[0]).toMatchObject({ ruleId: 'crib-height', ruleIndex: 0, level: 'error' });
  expect(run.results[0].locations[0].physicalLocation).toMatchObject({
    artifactLocation: { uri: 'plans/tall.crib' },
    region: { startLine: 3, startColumn: 5, endLine: 3, endColumn: 17 },
  });
});

it('carries the fix as a change of text', () => {
  expect(log().results[0].fixes[0]).toEqual({
    description: { text: 'Use 6 courses' },
    artifactChanges: [
      {
        artifactLocation: { uri: 'plans/tall.crib' },
        replacements: [
          {
            deletedRegion: { startLine: 3, startColumn: 15, endLine: 3, endColumn: 17 },
            insertedContent: { text: '6' },
          },
        ],
      },
    ],
  });
});

it('marks a finding the same when its line moves, and another one differently', () => {
  const mark = (finding: typeof tooHigh) =>
    log(sampleReport([finding])).results[0].partialFingerprints['cribwrightFinding/v1'];
  expect(mark(tooHigh)).toBe(mark({ ...tooHigh, at: { element: 'crib/A' } }));
  expect(mark(tooHigh)).not.toBe(mark({ ...tooHigh, subject: { element: 'crib/B' } }));
});

it('shows an accepted finding as suppressed, with who, until when and why', () => {
  const accepted = { by: 'Capt. Ortega', reason: 'teaching stand', until: '2031-01-01' };
  expect(log(sampleReport([{ ...tooHigh, accepted }])).results[0].suppressions).toEqual([
    { kind: 'inSource', status: 'accepted', justification: 'Capt. Ortega, until 2031-01-01: teaching stand' },
  ]);
});

it('says that the run failed where a check could not run or a file could not be read', () => {
  expect(log().invocations[0].executionSuccessful).toBe(true);
  expect(log(sampleReport([{ ...tooHigh, couldNotRun: true }])).invocations[0].executionSuccessful).toBe(
    false,
  );
  const unreadable = log({ files: [], unreadable: [{ path: 'x.crib', why: name('gone') }] });
  expect(unreadable.invocations[0]).toMatchObject({
    executionSuccessful: false,
    toolExecutionNotifications: [{ level: 'error', message: { text: 'x.crib could not be read: gone' } }],
  });
});

import { expect, it } from 'vitest';
import { tally } from './tally.js';

const accepted = { by: 'training captain', until: '2026-12-31', reason: 'tried in the yard' };

it('counts each finding once: a check that could not run is never hidden, not even by an acceptance', () =>
  expect(
    tally([
      { severity: 'danger' },
      { severity: 'danger', accepted },
      { severity: 'warning' },
      { severity: 'note' },
      { severity: 'danger', couldNotRun: true },
      { severity: 'warning', couldNotRun: true, accepted },
      { severity: 'unused' },
    ]),
  ).toEqual({ danger: 1, warning: 1, note: 1, accepted: 1, notRun: 2 }));

it('counts a check that could not run where the text was not read whole', () => {
  expect(tally([], true)).toEqual({ danger: 0, warning: 0, note: 0, accepted: 0, notRun: 1 });
  expect(tally([{ severity: 'danger', couldNotRun: true }], true).notRun).toBe(1);
});

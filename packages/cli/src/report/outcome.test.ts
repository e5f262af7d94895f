import { name } from '@cribwright/messages';
import { expect, it } from 'vitest';
import { sampleReport, tooHigh } from '../testing/sample-report.js';
import { exitCode, tally } from './outcome.js';

it('ends with 0 where nothing is unsafe', () => {
  expect(exitCode(sampleReport([]))).toBe(0);
  expect(exitCode(sampleReport([{ ...tooHigh, severity: 'warning' }]))).toBe(0);
});

it('ends with 1 where something is unsafe', () => {
  expect(exitCode(sampleReport([tooHigh]))).toBe(1);
});

it('never ends with 0 where a check could not run, whatever its severity', () => {
  const report = sampleReport([{ ...tooHigh, severity: 'note', couldNotRun: true }]);
  expect(exitCode(report)).toBe(2);
  expect(tally(report)).toMatchObject({ note: 0, notRun: 1 });
});

it('ends with 1 where something is unsafe and another check could not run', () => {
  expect(exitCode(sampleReport([tooHigh, { ...tooHigh, couldNotRun: true }]))).toBe(1);
});

it('ends with 2 where a path could not be read, whatever else was found', () => {
  const report = { ...sampleReport([tooHigh]), unreadable: [{ path: 'x.crib', why: name('gone') }] };
  expect(exitCode(report)).toBe(2);
});

it('does not count an accepted finding as a danger, and says how many there are', () => {
  const accepted = { by: 'Capt. Ortega', reason: 'teaching stand', until: '2031-01-01' };
  const report = sampleReport([{ ...tooHigh, accepted }]);
  expect(exitCode(report)).toBe(0);
  expect(tally(report)).toMatchObject({ danger: 0, accepted: 1 });
});

it('does not let an acceptance cover a check that could not run', () => {
  const accepted = { by: 'Capt. Ortega', reason: 'teaching stand', until: '2031-01-01' };
  expect(exitCode(sampleReport([{ ...tooHigh, accepted, couldNotRun: true }]))).toBe(2);
});

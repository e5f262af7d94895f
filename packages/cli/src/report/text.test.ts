import { stripVTControlCharacters } from 'node:util';
import { caution } from '@cribwright/engine';
import { name } from '@cribwright/messages';
import { expect, it } from 'vitest';
import { colored, plain } from '../terminal/paint.js';
import { sampleReport, tooHigh } from '../testing/sample-report.js';
import { textReport } from './text.js';
import { speechOf } from './words.js';

it('gives the line, the sum, the source, the fix, and the caution last', () => {
  const text = textReport(sampleReport([tooHigh]), plain);
  expect(text.split('\n').slice(0, 15)).toEqual([
    'Tall  plans/tall.crib',
    '',
    'DANGER  crib-height  crib A  plans/tall.crib:3:5',
    '  Crib A is 49 in tall. The limit is 24 in with 2 of 4 contacts loaded (1.5 × 16 in). Use 6 courses.',
    '  3 |     courses   14',
    '    |     ^^^^^^^^^^^^',
    '  height        49 in  courses × dressed depth = 14 × 3.5 in',
    '  height limit  24 in  height ratio some contacts × width outside to outside of contacts = 1.5 × 16 in',
    '  sources  policy CountyPolicy, height ratio some contacts: common practice, no source',
    '  see      Captures set here: 2 of 4 contacts loaded. plans/tall.crib:4:5',
    '  fix      Use 6 courses',
    '',
    '1 plan, 1 danger, 0 warnings, 0 notes',
    '',
    'Limits of this tool',
  ]);
  expect(text.trimEnd().endsWith(caution)).toBe(true);
});

it('is loud about a check that could not run, and does not call the plan clean', () => {
  const text = textReport(sampleReport([{ ...tooHigh, severity: 'note', couldNotRun: true }]), plain);
  expect(text).toContain('COULD NOT RUN  crib-height  crib A');
  expect(text).toContain('1 check could not run.');
});

it('says the same words in color', () => {
  const report = sampleReport([tooHigh]);
  const stripped = stripVTControlCharacters(textReport(report, colored));
  expect(stripped).toBe(textReport(report, plain));
});

it('ends with the caution even where nothing could be read', () => {
  const text = textReport({ files: [], unreadable: [{ path: 'x.crib', why: name('gone') }] }, plain);
  expect(text).toContain('COULD NOT READ  x.crib: gone');
  expect(text.trimEnd().endsWith(caution)).toBe(true);
});

it('speaks Spanish, in the units asked for', () => {
  const text = textReport(sampleReport([tooHigh]), plain, speechOf({ language: 'es', units: 'si' }));
  expect(text).toContain('PELIGRO  crib-height  crib A  plans/tall.crib:3:5');
  expect(text).toContain('El crib A mide 1,245 mm de alto.');
  expect(text).toContain('  arreglo  Usar 6 hiladas');
  expect(text).toContain('1 plan, 1 peligro, 0 advertencias, 0 notas');
  expect(text).not.toMatch(/ in\b|DANGER|dangers/);
});

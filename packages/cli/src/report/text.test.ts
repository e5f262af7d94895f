import { stripVTControlCharacters } from 'node:util';
import { caution } from '@cribwright/engine';
import { expect, it } from 'vitest';
import { colored, plain } from '../terminal/paint.js';
import { sampleReport, tooHigh } from '../testing/sample-report.js';
import { textReport } from './text.js';

it('gives the line, the sum, the source, the fix, and the caution last', () => {
  const text = textReport(sampleReport([tooHigh]), plain);
  expect(text.split('\n').slice(0, 15)).toEqual([
    'Tall  plans/tall.crib',
    '',
    'DANGER  crib-height  crib A  plans/tall.crib:3:5',
    '  Crib A stands 49 in. With 2 contacts loaded it may stand 24 in.',
    '  3 |     courses   14',
    '    |     ^^^^^^^^^^^^',
    '  height     49 in  courses × dressed depth = 14 × 3.5 in',
    '  may stand  24 in  ratio × width outside to outside of contacts = 1.5 × 16 in',
    '  sources  policy CountyPolicy, height ratio some contacts: common practice, no source',
    '  see      only the rail is captured here plans/tall.crib:4:5',
    '  fix      Use 6 courses',
    '',
    '1 plan, 1 danger, 0 warnings, 0 notes',
    '',
    'Limits of this tool.',
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
  const text = textReport({ files: [], unreadable: [{ path: 'x.crib', why: 'gone' }] }, plain);
  expect(text).toContain('COULD NOT READ  x.crib: gone');
  expect(text.trimEnd().endsWith(caution)).toBe(true);
});

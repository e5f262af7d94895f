import { readFileSync } from 'node:fs';
import { name } from '@cribwright/messages';
import { Ajv } from 'ajv';
import { expect, it } from 'vitest';
import { height, limit, sampleReport, tooHigh } from '../testing/sample-report.js';
import { figureValue, jsonReport, schemaId } from './json.js';
import { version } from './version.js';
import { plainSpeech } from './words.js';

const { words } = plainSpeech;

const read = (path: string) => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'));
const schema = read('schema/check.schema.json');
const valid = new Ajv({ allErrors: true, strict: true, strictRequired: false }).compile(schema);

it.each([
  ['nothing found', sampleReport([])],
  ['a danger', sampleReport([tooHigh])],
  ['a check that could not run', sampleReport([{ ...tooHigh, couldNotRun: true }])],
  ['a path that could not be read', { files: [], unreadable: [{ path: 'x', why: name('gone') }] }],
])('keeps to the published schema: %s', (_what, report) => {
  const value = JSON.parse(jsonReport(report));
  expect(valid(value), JSON.stringify(valid.errors)).toBe(true);
});

it('is refused by the schema where a figure has no source', () => {
  const value = JSON.parse(jsonReport(sampleReport([tooHigh])));
  delete value.files[0].plans[0].findings[0].figures[0].source;
  expect(valid(value)).toBe(false);
});

it('gives each finding its place, counted from 1, and its figures', () => {
  const finding = JSON.parse(jsonReport(sampleReport([tooHigh]))).files[0].plans[0].findings[0];
  expect(finding).toMatchObject({
    rule: 'crib-height',
    severity: 'danger',
    subject: 'crib A',
    range: { start: { line: 3, character: 5 }, end: { line: 3, character: 17 } },
    figures: [
      { key: 'height', value: 49, unit: 'in', formula: 'courses × dressed depth = 14 × 3.5 in' },
      { key: 'heightLimit', value: 24, unit: 'in' },
    ],
  });
});

it('never turns what is not known into a number', () => {
  const figure = figureValue({ ...limit, value: undefined }, words);
  expect(figure).toMatchObject({ known: false, text: 'not known' });
  expect(figure).not.toHaveProperty('value');
});

it('gives both ends of a range', () => {
  expect(figureValue({ ...height, value: { low: 0.254, high: 0.508 } }, words)).toMatchObject({
    low: 10,
    high: 20,
  });
});

it('names its schema and the version of the package', () => {
  expect(schema.$id).toBe(schemaId);
  expect(read('package.json').version).toBe(version);
});

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { rules } from '../generated/rule-index.js';
import { rulePage } from './rule-page.js';

const onDisk = (id: string, file: string): string =>
  readFileSync(new URL(`../${id}/${file}`, import.meta.url), 'utf8');

it.each(rules.map((r) => r.id))('gives the page of %s as it is on disk, in both languages', (id) => {
  expect(rulePage(id, 'en')).toBe(onDisk(id, 'rule.md'));
  expect(rulePage(id, 'es')).toBe(onDisk(id, 'rule.es.md'));
});

it.each(['no-such-rule', 'constructor', ''])('has no page for "%s"', (id) => {
  expect(rulePage(id, 'en')).toBeUndefined();
});

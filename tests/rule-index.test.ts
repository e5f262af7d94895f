import { readFileSync } from 'node:fs';
import { english } from '@cribwright/messages/testing';
import { rules } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { missingHeadings } from './rules/page.js';

const source = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');

it('has an index of rules that is up to date', async () => {
  const made = (await import(new URL('../packages/rules/build/rule-index.mjs', import.meta.url).href)) as {
    ruleIndex: () => string;
    ruleFolders: () => string[];
  };
  expect(source('../packages/rules/src/generated/rule-index.ts')).toBe(made.ruleIndex());
  expect(rules.map((r) => r.id)).toEqual(made.ruleFolders());
});

it.each(rules.map((r) => [r.id, r] as const))('%s has its page, its sentence and its sources', (id, rule) => {
  const page = source(`../packages/rules/src/${id}/rule.md`);
  expect(missingHeadings(page)).toEqual([]);
  expect(page).toContain(`# ${id}: `);
  expect(english(rule.protects)).toMatch(/\.$/);
  expect(rule.sources.length).toBeGreaterThan(0);
});

import { readFileSync } from 'node:fs';
import { rules } from '@cribwright/engine';
import { english } from '@cribwright/messages/testing';
import { expect, it } from 'vitest';
import { missingHeadings } from './rules/page.js';

const source = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');

it('has an index of rules that is up to date', async () => {
  const made = (await import(new URL('../packages/engine/build/rule-index.mjs', import.meta.url).href)) as {
    ruleIndex: () => string;
    ruleFolders: () => string[];
  };
  expect(source('../packages/engine/src/rules/generated/rule-index.ts')).toBe(made.ruleIndex());
  expect(rules.map((r) => r.id)).toEqual(made.ruleFolders());
});

it.each(rules.map((r) => [r.id, r] as const))('%s has its page, its sentence and its sources', (id, rule) => {
  const page = source(`../packages/engine/src/rules/${id}/rule.md`);
  expect(missingHeadings(page)).toEqual([]);
  expect(page).toContain(`# ${id}: `);
  expect(english(rule.protects)).toMatch(/\.$/);
  expect(rule.sources.length).toBeGreaterThan(0);
});

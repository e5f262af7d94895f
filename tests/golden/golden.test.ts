import { existsSync, readdirSync } from 'node:fs';
import { languageCodes } from '@cribwright/language';
import { rules } from '@cribwright/rules';
import { beforeAll, describe, expect, it } from 'vitest';
import { readCases, writeCases } from './case-file.js';
import { sayCase } from './say-case.js';

/**
 * Every sentence that the language and the rules say, with its range and its fixes, beside a small plan that earns it.
 * `UPDATE_GOLDEN=1 npx vitest run --config tests/vitest.config.ts tests/golden` writes what is said now; read the
 * difference before committing it.
 */
const update = process.env.UPDATE_GOLDEN === '1';

const folders = [
  ['language', 'text'],
  ['rules', 'plan'],
] as const;

/** Cases of a rule may also stand in its own folder. */
const ruleFolders = new URL('../../packages/rules/src/', import.meta.url);
const inRuleFolders = readdirSync(ruleFolders)
  .map((code) => ({ code, path: new URL(`${code}/cases.md`, ruleFolders) }))
  .filter(({ path }) => existsSync(path))
  .map(({ code, path }) => ({ name: `${code}/cases.md`, path, code, source: 'plan' as const }));

const inFolders = folders.flatMap(([name, source]) => {
  const folder = new URL(`./${name}/`, import.meta.url);
  return readdirSync(folder)
    .filter((f) => f.endsWith('.md'))
    .map((f) => ({ name: `${name}/${f}`, path: new URL(f, folder), code: f.replace(/\.md$/, ''), source }));
});

const files = [...inFolders, ...inRuleFolders];

describe.each(files)('$name', ({ path, code, source }) => {
  const cases = readCases(path);
  it('has cases', () => expect(cases.length).toBeGreaterThan(0));
  if (update) {
    beforeAll(async () => {
      const said = [];
      for (const c of cases) said.push({ ...c, said: await sayCase(c, source, code) });
      writeCases(path, said);
    });
  }
  it.each(cases)('$title', async (c) => {
    const said = await sayCase(c, source, code);
    expect(said).toBe(readCases(path).find((now) => now.title === c.title)?.expected);
    if (c.title.startsWith('says nothing')) expect(said).toBe('nothing\n');
    else expect(said).toContain(` ${code} (`);
  });
});

/**
 * Too long for a golden file, that cannot be read, or of a plan that no text makes: tests beside src/workspace of the
 * language hold them.
 */
const heldElsewhere = [
  'file-too-long',
  'line-too-long',
  'plan-not-whole',
  'too-many-plans',
  'use-unreadable',
];

/** Slips of whoever writes a first plan: `tests/slips` holds them, with golden files of its own. */
const heldBySlips = [
  'block-twice',
  'brace-bracket',
  'brace-twice',
  'comma-missing',
  'feet-dash',
  'file-empty',
  'file-not-utf8',
  'line-continued',
  'name-next-line',
  'step-number-sign',
  'text-not-opened',
  'type-spaces',
];

it('has a file for every code of the language', () => {
  const there = files.filter((f) => f.source === 'text').map((f) => f.code);
  expect(
    languageCodes.filter((c) => !there.includes(c) && !heldElsewhere.includes(c) && !heldBySlips.includes(c)),
  ).toEqual([]);
});

it('has a file for every rule', () => {
  const there = files.filter((f) => f.source === 'plan').map((f) => f.code);
  expect(rules.map((r) => r.id).filter((id) => !there.includes(id))).toEqual([]);
});

it('holds more than 150 cases', () => {
  expect(files.reduce((sum, f) => sum + readCases(f.path).length, 0)).toBeGreaterThan(150);
});

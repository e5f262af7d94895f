import { mkdirSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { folderOf } from './folder-of.js';

const top = mkdtempSync(join(tmpdir(), 'cribwright-folder-'));
const file = join(top, 'county', 'plans', 'a.crib');
mkdirSync(join(top, 'county', 'plans'), { recursive: true });
mkdirSync(join(top, 'elsewhere'));

it('is where the command runs, for a file in it', () => {
  expect(folderOf(file, join(top, 'county'))).toBe(join(top, 'county'));
});

it('is its own folder, for a file from elsewhere', () => {
  expect(folderOf(file, join(top, 'elsewhere'))).toBe(join(top, 'county', 'plans'));
});

it('is the folder under version control, where there is one', () => {
  mkdirSync(join(top, 'county', '.git'));
  expect(folderOf(file, join(top, 'elsewhere'))).toBe(join(top, 'county'));
});

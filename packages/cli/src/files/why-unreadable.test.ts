import { mkdtempSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { whyUnreadable } from './why-unreadable.js';

const folder = mkdtempSync(join(tmpdir(), 'cribwright-unreadable-'));
const plan = join(folder, 'plan.crib');
writeFileSync(plan, 'plan "a" {}');

it('has nothing against a plan', () => {
  expect(whyUnreadable(plan)).toBeUndefined();
});

it('opens no folder and nothing behind a link that is no file', () => {
  const link = join(folder, 'endless.crib');
  symlinkSync('/dev/null', link);
  expect(whyUnreadable(link)).toBe('it is no file');
  expect(whyUnreadable(folder)).toBe('it is no file');
});

it('takes nothing larger than any plan', () => {
  const huge = join(folder, 'huge.crib');
  writeFileSync(huge, '');
  truncateSync(huge, 5 * 1024 * 1024);
  expect(whyUnreadable(huge)).toBe('it is larger than 4 MB, so it is no plan');
});

it('says what is wrong with a path that leads nowhere', () => {
  expect(whyUnreadable(join(folder, 'gone.crib'))).toContain('ENOENT');
});

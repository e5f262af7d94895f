import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { mostBytes, readPlanFile } from './plan-file.js';

let folder = '';
const at = (...path: string[]) => join(folder, ...path);
const file = (name: string, content: string | Uint8Array) => {
  writeFileSync(at(name), content);
  return at(name);
};

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cribwright-plan-file-'));
  mkdirSync(at('inside'));
  mkdirSync(at('outside'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('reads text, with its marks and letters as they are', async () => {
  expect(await readPlanFile(file('a.crib', '\ufeffplan "½" {}\r\n'))).toBe('\ufeffplan "½" {}\r\n');
  expect(await readPlanFile(file('empty.crib', ''))).toBe('');
});

it.each([
  ['gone.crib', undefined],
  ['a\0b.crib', undefined],
  [`${'long'.repeat(100)}.crib`, undefined],
  ['inside', { unreadable: 'not a file' }],
])('says what is wrong with %j', async (name, what) => {
  expect(await readPlanFile(at(name))).toEqual(what);
});

it('opens no device, and nothing larger than any plan', async () => {
  symlinkSync('/dev/zero', at('endless.crib'));
  expect(await readPlanFile(at('endless.crib'))).toEqual({ unreadable: 'not a file' });
  truncateSync(file('huge.crib', ''), mostBytes + 1);
  expect(await readPlanFile(at('huge.crib'))).toEqual({ unreadable: 'too large' });
});

it('takes no text in another encoding, and nothing that is not text', async () => {
  for (const bytes of [Buffer.from('\ufeffplan', 'utf16le'), Buffer.from('plan', 'utf16le'), Buffer.of(0xe4)])
    expect(await readPlanFile(file('x.crib', bytes))).toEqual({ unreadable: 'not text' });
});

describe('a link', () => {
  it('is followed inside the folder', async () => {
    file('inside/a.crib', 'plan "a" {}');
    symlinkSync(at('inside', 'a.crib'), at('inside', 'b.crib'));
    expect(await readPlanFile(at('inside', 'b.crib'), at('inside'))).toBe('plan "a" {}');
  });

  it('is not followed out of it, be it a file or a folder on the way', async () => {
    file('outside/a.crib', 'plan "a" {}');
    symlinkSync(at('outside', 'a.crib'), at('inside', 'file.crib'));
    symlinkSync(at('outside'), at('inside', 'folder'));
    for (const path of [at('inside', 'file.crib'), at('inside', 'folder', 'a.crib')])
      expect(await readPlanFile(path, at('inside'))).toEqual({ unreadable: 'outside' });
  });

  it('may be the folder itself: what it leads to is what it holds', async () => {
    file('inside/a.crib', 'plan "a" {}');
    symlinkSync(at('inside'), at('name'));
    expect(await readPlanFile(at('name', 'a.crib'), at('name'))).toBe('plan "a" {}');
  });

  it('to itself ends', async () => {
    symlinkSync(at('loop.crib'), at('loop.crib'));
    expect(await readPlanFile(at('loop.crib'))).toEqual({ unreadable: 'looping link' });
  });
});

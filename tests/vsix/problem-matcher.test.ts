import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { bundled } from '../bundled.js';

const root = new URL('../..', import.meta.url).pathname;
const { contributes } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

interface Matcher {
  readonly name: string;
  readonly severity: string;
  readonly pattern: readonly [Record<string, string | number>, Record<string, string | number>];
}

/** What the Problems view would list of a report, by the matchers of the manifest. */
const problems = (report: string) => {
  const lines = report.split('\n');
  return (contributes.problemMatchers as readonly Matcher[]).flatMap(({ severity, pattern: [head, body] }) =>
    lines.flatMap((line, i) => {
      const place = new RegExp(String(head.regexp)).exec(line);
      const words = new RegExp(String(body.regexp)).exec(lines[i + 1] ?? '');
      return place && words
        ? [{ severity, rule: place[1], file: place[2], line: Number(place[3]), message: words[1] }]
        : [];
    }),
  );
};

let command = '';
beforeAll(async () => {
  command = await bundled('cli');
});
const check = (path: string) =>
  spawnSync(process.execPath, [command, 'check', path], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });

it('finds every finding that the command line prints, with its place and its words', () => {
  const { stdout, status } = check('examples/plans/trailer-on-car-faulty.crib');
  expect(status).toBe(1);
  const heads = stdout
    .split('\n')
    .filter((line) => /^(DANGER|ERROR|COULD NOT RUN|WARNING|NOTE) {2}/.test(line));
  const found = problems(stdout);
  expect(heads.length).toBeGreaterThan(3);
  expect(found).toHaveLength(heads.length);
  expect(found).toContainEqual(
    expect.objectContaining({
      severity: 'error',
      rule: 'crib-height',
      file: expect.stringMatching(/trailer-on-car-faulty\.crib$/),
      message: expect.stringMatching(/^Crib \w+ is [\d /]+ in tall\. The limit is /),
    }),
  );
});

it('finds what cannot be read, too', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'unread-')), 'unread.crib');
  writeFileSync(file, 'plan "Unread" {\n  crib A {\n    courses 4 lbs\n  }\n}\n');
  const found = problems(check(file).stdout);
  expect(found).toContainEqual(expect.objectContaining({ severity: 'error', file, line: 3 }));
});

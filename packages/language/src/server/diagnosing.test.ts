import { expect, it } from 'vitest';
import { diagnosing, type Report } from './diagnosing.js';

const turn = (run: () => void) => void setImmediate(run);

/** Files by name; a report says what the file says. */
function desk(files: Map<string, { version: number; text: string }>) {
  const sent: Report<string>[] = [];
  const cleared: string[] = [];
  let checks = 0;
  const work = diagnosing<string>({
    turn,
    check: async (uri) => {
      checks++;
      const file = files.get(uri);
      return file && { uri, version: file.version, content: file.text, key: file.text };
    },
    send: (report) => sent.push(report),
    clear: (uri) => cleared.push(uri),
  });
  return { work, sent, cleared, checks: () => checks };
}

it('sends one report for a burst of edits, of the last version', async () => {
  const files = new Map([['a', { version: 0, text: '' }]]);
  const { work, sent, checks } = desk(files);
  for (let version = 1; version <= 500; version++) {
    files.set('a', { version, text: `text ${version}` });
    work.touch('a');
  }
  await work.settled();
  expect(sent.map((r) => r.version)).toEqual([500]);
  expect(checks()).toBe(1);
});

it('sends nothing where nothing changed', async () => {
  const files = new Map([['a', { version: 1, text: 'same' }]]);
  const { work, sent } = desk(files);
  work.touch('a');
  await work.settled();
  work.touch('a');
  await work.settled();
  expect(sent).toHaveLength(1);
});

it('sends again for a new version, even if it says the same', async () => {
  const files = new Map([['a', { version: 1, text: 'same' }]]);
  const { work, sent } = desk(files);
  work.touch('a');
  await work.settled();
  files.set('a', { version: 2, text: 'same' });
  work.touch('a');
  await work.settled();
  expect(sent.map((r) => r.version)).toEqual([1, 2]);
});

it('checks the file touched last first', async () => {
  const files = new Map([
    ['a', { version: 1, text: 'a' }],
    ['b', { version: 1, text: 'b' }],
  ]);
  const { work, sent } = desk(files);
  work.touch('a');
  work.touch('b');
  await work.settled();
  expect(sent.map((r) => r.uri)).toEqual(['b', 'a']);
});

it('never sends a report that an edit overtook', async () => {
  const files = new Map([['a', { version: 1, text: 'old' }]]);
  const sent: string[] = [];
  let release = (): void => undefined;
  const slow = new Promise<void>((done) => {
    release = done;
  });
  let first = true;
  const work = diagnosing<string>({
    turn,
    check: async (uri) => {
      const file = files.get(uri) ?? { version: 0, text: '' };
      if (first) {
        first = false;
        await slow;
      }
      return { uri, version: file.version, content: file.text, key: file.text };
    },
    send: ({ content }) => sent.push(content),
    clear: () => undefined,
  });
  work.touch('a');
  await new Promise((done) => setTimeout(done, 20));
  files.set('a', { version: 2, text: 'new' });
  work.touch('a');
  release();
  await work.settled();
  expect(sent).toEqual(['new']);
});

it('takes back what it showed when a file goes, and only then', async () => {
  const files = new Map([['a', { version: 1, text: 'a' }]]);
  const { work, cleared } = desk(files);
  work.touch('a');
  await work.settled();
  work.forget('a');
  work.forget('b');
  expect(cleared).toEqual(['a']);
});

import { expect, it } from 'vitest';
import { type DiagnosticReport, scheduleDiagnostics } from './diagnostic-scheduler.js';

const turn = (run: () => void) => void setImmediate(run);

/** Nothing is left to be worked out. */
const nothingLeft = (): Iterator<void, boolean> => ({ next: () => ({ done: true, value: false }) });

/** Nobody waits, nothing is laid out before it is checked, and nothing is left to be worked out after. */
const idle = {
  turn,
  idleDelay: async () => undefined,
  layoutDelay: () => new Promise<void>((done) => turn(done)),
  layout: async () => false,
  complete: nothingLeft,
  clear: () => undefined,
};

/** Files by name; a report says what the file says. */
function desk(files: Map<string, { version: number; text: string }>) {
  const sent: DiagnosticReport<string>[] = [];
  const cleared: string[] = [];
  let checks = 0;
  const work = scheduleDiagnostics<string>({
    ...idle,
    check: async (uri) => {
      checks++;
      const file = files.get(uri);
      return file && { uri, version: file.version, content: file.text, key: file.text, open: false };
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
  const work = scheduleDiagnostics<string>({
    ...idle,
    check: async (uri) => {
      const file = files.get(uri) ?? { version: 0, text: '' };
      if (first) {
        first = false;
        await slow;
      }
      return { uri, version: file.version, content: file.text, key: file.text, open: false };
    },
    send: ({ content }) => sent.push(content),
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

/** A file whose check leaves three steps to be worked out. */
function heavy() {
  const sent: string[] = [];
  const ran: string[] = [];
  let text = 'one';
  let version = 1;
  const whole = new Set<string>();
  const work = scheduleDiagnostics<string>({
    ...idle,
    check: async (uri) => {
      const content = whole.has(text) ? `${text}, whole` : text;
      return { uri, version, content, key: content, open: true };
    },
    *complete() {
      const of = text;
      if (whole.has(of)) return false;
      for (const step of [1, 2, 3]) {
        ran.push(`${of} ${step}`);
        yield;
      }
      whole.add(of);
      return true;
    },
    send: ({ content }) => sent.push(content),
  });
  const edit = (to: string): void => {
    text = to;
    version++;
    work.touch('a');
  };
  return { work, sent, ran, edit };
}

it('shows the quick checks at once, and the whole when it is worked out', async () => {
  const { work, sent } = heavy();
  work.touch('a');
  await work.settled();
  expect(sent).toEqual(['one', 'one, whole']);
});

it('drops what is being worked out at an edit', async () => {
  const { work, sent, ran, edit } = heavy();
  work.touch('a');
  while (!ran.includes('one 2')) await new Promise((next) => setImmediate(next));
  edit('two');
  await work.settled();
  expect(sent).toEqual(['one', 'two', 'two, whole']);
  expect(ran).not.toContain('one 3');
});

it('works nothing out twice', async () => {
  const { work, ran } = heavy();
  work.touch('a');
  await work.settled();
  work.touch('a');
  await work.settled();
  expect(ran).toEqual(['one 1', 'one 2', 'one 3']);
});

it('shows nothing of a file that was closed while it was being checked', async () => {
  const files = new Map([['a', { version: 1, text: 'a' }]]);
  const sent: string[] = [];
  let release = (): void => undefined;
  const slow = new Promise<void>((done) => {
    release = done;
  });
  const work = scheduleDiagnostics<string>({
    ...idle,
    check: async (uri) => {
      const file = files.get(uri);
      await slow;
      return file && { uri, version: file.version, content: file.text, key: file.text, open: false };
    },
    send: ({ content }) => sent.push(content),
  });
  work.touch('a');
  await new Promise((done) => setTimeout(done, 20));
  files.delete('a');
  work.forget('a');
  release();
  await work.settled();
  expect(sent).toEqual([]);
});

/** A file whose loads take three steps, and whose push takes one more after a pause. */
function slow(drawn: boolean) {
  const log: string[] = [];
  let text = 'one';
  let version = 1;
  let known: 'geometry' | 'loads' | 'push' = 'geometry';
  const work = scheduleDiagnostics<string>({
    ...idle,
    idleDelay: async () => void log.push('pause'),
    layout: async () => {
      if (drawn) log.push(`layout ${text}`);
      return drawn;
    },
    check: async (uri) => {
      const content = `${text} ${known}`;
      return { uri, version, content, key: content, open: true };
    },
    *complete(_uri, wanted) {
      if (known === wanted || known === 'push') return false;
      for (const step of wanted === 'loads' ? [1, 2, 3] : [1]) {
        log.push(`${wanted} ${step} of ${text}`);
        yield;
      }
      known = wanted;
      return true;
    },
    send: ({ content }) => log.push(`sent ${content}`),
  });
  const edit = (to: string): void => {
    text = to;
    version++;
    known = 'geometry';
    work.touch('a');
  };
  return { work, log, edit };
}

it('shows what hangs on no load, then without a pause the loads, then the push', async () => {
  const { work, log } = slow(true);
  work.touch('a');
  await work.settled();
  expect(log).toEqual([
    'layout one',
    'sent one geometry',
    'loads 1 of one',
    'loads 2 of one',
    'loads 3 of one',
    'sent one loads',
    'pause',
    'push 1 of one',
    'sent one push',
  ]);
});

it('lets an edit in after the layout, and between the steps of the loads', async () => {
  const { work, log, edit } = slow(true);
  work.touch('a');
  while (!log.includes('layout one')) await new Promise((next) => setImmediate(next));
  edit('two');
  while (!log.includes('loads 2 of two')) await new Promise((next) => setImmediate(next));
  edit('three');
  await work.settled();
  expect(log.filter((l) => l.startsWith('sent'))).toEqual([
    'sent two geometry',
    'sent three geometry',
    'sent three loads',
    'sent three push',
  ]);
  expect(log).not.toContain('loads 3 of two');
});

it('does not let an edit wait for the pause before the push to end', async () => {
  const sent: string[] = [];
  let version = 1;
  const work = scheduleDiagnostics<string>({
    ...idle,
    // Ends only where nobody types any more.
    idleDelay: () => new Promise((done) => setTimeout(done, version === 1 ? 1_000_000 : 0)),
    check: async (uri) => ({ uri, version, content: `${version}`, key: `${version}`, open: false }),
    send: ({ content }) => sent.push(content),
  });
  work.touch('a');
  while (sent.length === 0) await new Promise((next) => setImmediate(next));
  for (let i = 0; i < 20; i++) await new Promise((next) => setImmediate(next));
  version = 2;
  work.touch('a');
  await work.settled();
  expect(sent).toEqual(['1', '2']);
});

it('shows what somebody else has worked out meanwhile', async () => {
  const sent: string[] = [];
  let known = 'geometry';
  const work = scheduleDiagnostics<string>({
    ...idle,
    complete: () => {
      known = 'whole';
      return nothingLeft();
    },
    check: async (uri) => ({ uri, version: 1, content: known, key: known, open: known === 'geometry' }),
    send: ({ content }) => sent.push(content),
  });
  work.touch('a');
  await work.settled();
  expect(sent).toEqual(['geometry', 'whole']);
});

import { quiet, type Turn } from './quiet.js';

/** What one file has to show, ready to send. `key` is equal for two reports that say the same. */
export interface Report<Content> {
  readonly uri: string;
  readonly version: number | undefined;
  readonly content: Content;
  readonly key: string;
}

export interface Diagnosing {
  /** The text of a file changed, or something it depends on. */
  touch(uri: string): void;
  /** The file is gone from the editor: takes back what was shown for it. */
  forget(uri: string): void;
  /** Resolves once nothing waits to be checked. */
  settled(): Promise<void>;
}

/**
 * Checks touched files, the last touched first, one at a time. An edit stops the round between two files and
 * begins a new one. Sends a report only where it says something new, or speaks of a new version.
 */
export function diagnosing<Content>(the: {
  readonly turn: Turn;
  /** `undefined` when the file is no longer open. */
  readonly check: (uri: string) => Promise<Report<Content> | undefined>;
  readonly send: (report: Report<Content>) => void;
  readonly clear: (uri: string) => void;
}): Diagnosing {
  const waiting = new Set<string>();
  const sent = new Map<string, Report<Content>>();
  const settle: (() => void)[] = [];
  let running = false;

  const calm = quiet(the.turn, () => void round());

  async function round(): Promise<void> {
    if (running) return;
    running = true;
    const begun = calm.count;
    while (waiting.size > 0 && calm.count === begun) {
      const uri = [...waiting].at(-1) ?? '';
      waiting.delete(uri);
      const report = await the.check(uri);
      // An edit came while files were read: that round speaks of an old text.
      if (calm.count !== begun && report) waiting.add(uri);
      else if (report) offer(report);
      await new Promise<void>((next) => the.turn(next));
    }
    running = false;
    if (waiting.size > 0) return calm.stir();
    for (const done of settle.splice(0)) done();
  }

  function offer(report: Report<Content>): void {
    const before = sent.get(report.uri);
    if (before?.key === report.key && before.version === report.version) return;
    sent.set(report.uri, report);
    the.send(report);
  }

  return {
    touch(uri) {
      waiting.delete(uri);
      waiting.add(uri);
      calm.stir();
    },
    forget(uri) {
      waiting.delete(uri);
      if (sent.delete(uri)) the.clear(uri);
    },
    settled: () =>
      waiting.size === 0 && !running ? Promise.resolve() : new Promise((done) => settle.push(done)),
  };
}

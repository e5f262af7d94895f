import type { Pending } from '@cribwright/workspace';
import { debounce, type Turn } from './debounce.js';

/** What one file has to show, ready to send. `key` is equal for two reports that say the same. */
export interface DiagnosticReport<Content> {
  readonly uri: string;
  readonly version: number | undefined;
  readonly content: Content;
  readonly key: string;
  /** Something of it is still to be worked out. */
  readonly open: boolean;
}

export interface DiagnosticScheduler {
  /** The text of a file changed, or something it depends on. */
  touch(uri: string): void;
  /** The file is gone from the editor: takes back what was shown for it. */
  forget(uri: string): void;
  /** Resolves once nothing waits to be checked or worked out. */
  settled(): Promise<void>;
}

export interface DiagnosticTasks<Content> {
  readonly turn: Turn;
  /** Resolves after a time without typing, before long checks begin. */
  readonly idleDelay: () => Promise<void>;
  /**
   * `undefined` when the file is no longer open. Stops in the middle where it was overtaken by an edit: what has
   * many plans must not hold up the file that somebody types in.
   */
  readonly check: (
    uri: string,
    overtaken: () => boolean,
  ) => Promise<DiagnosticReport<Content> | 'overtaken' | undefined>;
  /** Resolves after the time that a client needs to draw a layout: a check would compete with it for the processor. */
  readonly layoutDelay: () => Promise<void>;
  /** Shows what there is before the check, where that will take a while. Gives whether it did. */
  readonly layout: (uri: string) => Promise<boolean>;
  /** What the check left to be worked out, in steps; dropped at the next edit. Gives whether there was anything. */
  readonly complete: (uri: string, wanted: Pending) => Iterator<void, boolean>;
  readonly send: (report: DiagnosticReport<Content>) => void;
  readonly clear: (uri: string) => void;
}

/**
 * Checks touched files, the last touched first, one at a time. An edit stops the round between two files and
 * begins a new one. Sends a report only where it says something new, or speaks of a new version. Then works out
 * the loads that a check left open, and when nobody types the push.
 */
export function scheduleDiagnostics<Content>(the: DiagnosticTasks<Content>): DiagnosticScheduler {
  const waiting = new Set<string>();
  const sent = new Map<string, DiagnosticReport<Content>>();
  const settle: (() => void)[] = [];
  let running = false;

  const debounced = debounce(the.turn, () => void round());
  let endWait = (): void => undefined;
  /** The next edit: it must not wait for a pause to end. */
  const nextEdit = () =>
    new Promise<void>((done) => {
      endWait = done;
    });
  const edited = (): void => {
    debounced.trigger();
    endWait();
  };
  const turned = () => new Promise<void>((next) => the.turn(next));

  async function round(): Promise<void> {
    if (running) return;
    running = true;
    const begun = debounced.count;
    const overtaken = () => debounced.count !== begun;
    while (waiting.size > 0 && !overtaken()) {
      const uri = [...waiting].at(-1) ?? '';
      waiting.delete(uri);
      if (await the.layout(uri)) {
        // Seen first, checked then; a newer edit ends the wait.
        await Promise.race([the.layoutDelay(), nextEdit()]);
        if (overtaken()) {
          again(uri);
          break;
        }
      }
      const report = await the.check(uri, overtaken);
      // An edit came while files were read: that round speaks of an old text.
      if (report === 'overtaken' || (report && overtaken())) again(uri);
      else if (report) offer(uri, report);
      await turned();
    }
    await rest('loads', overtaken);
    if (!overtaken()) await Promise.race([the.idleDelay(), nextEdit()]);
    await rest('push', overtaken);
    running = false;
    if (waiting.size > 0 || overtaken()) return debounced.trigger();
    for (const done of settle.splice(0)) done();
  }

  /** After those that were touched since: the last touched is checked first. */
  function again(uri: string): void {
    if (waiting.has(uri)) return;
    const later = [...waiting];
    waiting.clear();
    for (const one of [uri, ...later]) waiting.add(one);
  }

  async function rest(wanted: Pending, overtaken: () => boolean): Promise<void> {
    for (const uri of [...sent.keys()].reverse()) {
      if (overtaken()) return;
      if (sent.get(uri)?.open !== true) continue;
      const steps = the.complete(uri, wanted);
      let step = steps.next();
      for (; step.done !== true; step = steps.next()) {
        await turned();
        if (overtaken()) return;
      }
      // Somebody else who waited for it may have worked it out meanwhile.
      const report = await the.check(uri, overtaken);
      if (report && report !== 'overtaken' && !overtaken()) offer(uri, report);
    }
  }

  function offer(uri: string, report: DiagnosticReport<Content>): void {
    const before = sent.get(uri);
    if (before?.key === report.key && before.version === report.version) return;
    sent.delete(uri);
    sent.set(uri, report);
    the.send(report);
  }

  return {
    touch(uri) {
      waiting.delete(uri);
      waiting.add(uri);
      edited();
    },
    forget(uri) {
      waiting.delete(uri);
      const shown = sent.get(uri);
      sent.delete(uri);
      if (shown) the.clear(shown.uri);
      // A check of it that is under way must not show it again.
      edited();
    },
    settled: () =>
      waiting.size === 0 && !running ? Promise.resolve() : new Promise((done) => settle.push(done)),
  };
}

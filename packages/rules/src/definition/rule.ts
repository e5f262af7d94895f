import type { Finding, Severity, Workings } from '@cribwright/engine';
import type { Message, SourceNote } from '@cribwright/messages';
import type { Family } from './family.js';

/** What a rule reports; the runner adds the rule's id, and its severity where none is given. */
export type RuleFinding = Omit<Finding, 'rule' | 'severity' | 'figures' | 'related' | 'fixes'> &
  Partial<Pick<Finding, 'severity' | 'figures' | 'related' | 'fixes'>>;

/**
 * One check. Its folder holds the module, its test, and the page that users read, which is a test too: `rule.md` in
 * English and `rule.es.md` in Spanish.
 * The index of rules is generated from the folders.
 */
export interface Rule {
  readonly id: string;
  readonly title: Message;
  readonly family: Family;
  /** Of its findings, unless a finding says otherwise. */
  readonly severity: Severity;
  /** What it protects against, in one sentence. */
  readonly protects: Message;
  readonly sources: readonly SourceNote[];
  /**
   * What it judges by: what is written of one element, the vehicle that the element meets too, or the whole plan. A rule
   * does not run where part of that could not be read.
   */
  readonly judges: 'element' | 'contact' | 'plan';
  /** What it reads beyond vehicles, supports and ground. It does not run where that could not be read. */
  readonly readsAlso?: readonly ('steps' | 'size up')[];
  /** The figures that it compares, by name, as on its page. */
  readonly compares: readonly string[];
  /** `found` is what the other rules found; only a rule of the `review` phase, which runs last, gets it. */
  readonly check: (w: Workings, found: readonly Finding[]) => readonly RuleFinding[];
  readonly phase?: 'review';
}

/** Common practice, no published source. */
export const practice: SourceNote = { kind: 'common practice' };
export const published = (title: string, locator?: string): SourceNote =>
  locator === undefined ? { kind: 'published', title } : { kind: 'published', title, locator };
export const fromMemory = (title: string): SourceNote => ({
  kind: 'from memory',
  title,
});

import type { Span, Term } from '@cribwright/syntax/internal';
import type { Match, MatchedSpan, Reference } from '../bound/bound-file.js';
import type { Pattern } from '../bound/shape.js';
import type { LanguageProblem } from '../problems/problem.js';
import { literalWords } from './literal-words.js';
import type { Expected } from './match.js';
import type { NameScope } from './scope.js';

/** How far a line could be read, and what would have gone on from there. */
export interface Stop {
  readonly at: number;
  readonly expected: readonly Expected[];
}

/** What has been read so far. Never changed: a branch that fails leaves it as it was. */
export interface State {
  readonly at: number;
  readonly values: Readonly<Record<string, unknown>>;
  readonly log: Log | undefined;
  readonly problems: number;
}

export interface Log {
  readonly before: Log | undefined;
  readonly pieces: readonly MatchedSpan[];
  readonly references: readonly Reference[];
  readonly problems: readonly LanguageProblem[];
}

export type Next = (state: State) => State | undefined;

export interface MatchRequest {
  readonly terms: readonly Term[];
  /** Where the phrase starts, past the key. */
  readonly from: number;
  readonly pattern: Pattern;
  readonly scope: NameScope;
  readonly text: string;
}

export type MatchResult =
  | { readonly match: Match; readonly stop: Stop }
  | { readonly match: undefined; readonly stop: Stop };

/** One try at one line: what it reads from, and how far any branch of it came. */
export class Matching {
  readonly reserved: ReadonlySet<string>;
  private furthest = 0;
  private expected: Expected[] = [];
  /** A line cannot make the matcher try without end. */
  private budget = 20_000;

  /** Strictly: every name known and every unit right. */
  constructor(
    readonly request: MatchRequest,
    readonly strict: boolean,
  ) {
    this.furthest = request.from;
    this.reserved = literalWords(request.pattern);
  }

  get stop(): Stop {
    return { at: this.furthest, expected: this.expected };
  }

  spent(): boolean {
    this.budget--;
    return this.budget < 0;
  }

  /** Notes what would have gone on from a place, and fails. */
  miss(at: number, expected: Expected): undefined {
    if (at > this.furthest) {
      this.furthest = at;
      this.expected = [];
    }
    if (at === this.furthest) this.expected.push(expected);
    return undefined;
  }

  /** How many terms spell these words, from a place on; 0 if they do not. */
  spelled(text: string, at: number): number {
    const words = text.split(' ');
    return words.every((w, i) => {
      const t = this.request.terms[at + i];
      return t?.kind === 'word' && t.text === w;
    })
      ? words.length
      : 0;
  }

  /** The state past some terms, with what they yielded. */
  took(
    s: State,
    length: number,
    values: Readonly<Record<string, unknown>>,
    log: Partial<Omit<Log, 'before'>>,
  ): State {
    return {
      at: s.at + length,
      values: { ...s.values, ...values },
      problems: s.problems + (log.problems?.length ?? 0),
      log: {
        before: s.log,
        pieces: log.pieces ?? [],
        references: log.references ?? [],
        problems: log.problems ?? [],
      },
    };
  }

  term(s: State): Term | undefined {
    return this.request.terms[s.at];
  }

  span(at: number, length: number): Span {
    const first = this.request.terms[at];
    const last = this.request.terms[at + length - 1];
    return { start: first?.start ?? 0, end: last?.end ?? 0 };
  }

  textOf(span: Span): string {
    return this.request.text.slice(span.start, span.end).trim();
  }
}

/** What a branch that came through has yielded. */
export const matchOf = (end: State): Match => ({ values: end.values, ...collect(end.log) });

function collect(log: Log | undefined): Pick<Match, 'pieces' | 'references' | 'problems'> {
  const all: Log[] = [];
  for (let l = log; l; l = l.before) all.push(l);
  all.reverse();
  return {
    pieces: all.flatMap((l) => l.pieces),
    references: all.flatMap((l) => l.references),
    problems: all.flatMap((l) => l.problems),
  };
}

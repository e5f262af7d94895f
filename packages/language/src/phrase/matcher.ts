import { closest, type Dimension, findUnit } from '@cribwright/units';
import type { Declaration, Reference } from '../binding/declaration.js';
import type { Span, Term } from '../grammar/syntax.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { say } from '../problems/words.js';
import { checkQuantity } from './check-quantity.js';
import type { Expression } from './expression.js';
import type { Expected, Match, Piece } from './match.js';
import { matchArguments } from './match-arguments.js';
import { unitOf } from './measure.js';
import { parseExpression } from './parse-expression.js';
import type { Pattern, QuantityRule, Shape, Written } from './pattern.js';
import type { NameScope } from './scope.js';
import { unknownName } from './unknown-name.js';

/** How far a line could be read, and what would have gone on from there. */
export interface Stop {
  readonly at: number;
  readonly expected: readonly Expected[];
}

/** What has been read so far. Never changed: a branch that fails leaves it as it was. */
interface State {
  readonly at: number;
  readonly values: Readonly<Record<string, unknown>>;
  readonly log: Log | undefined;
  readonly problems: number;
}

interface Log {
  readonly before: Log | undefined;
  readonly pieces: readonly Piece[];
  readonly references: readonly Reference[];
  readonly problems: readonly LanguageProblem[];
}

type Next = (state: State) => State | undefined;

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

/**
 * Reads the rest of a line by its pattern. First strictly: every name known and every unit right. Then leniently, so
 * that a line with a slip in it yields all it can, and a problem at the slip.
 */
export function matchLine(request: MatchRequest): MatchResult {
  const strict = new Matcher(request, true);
  const exact = strict.run();
  if (exact) return { match: exact, stop: strict.stop() };
  const lenient = new Matcher(request, false);
  const near = lenient.run();
  return { match: near, stop: lenient.stop() };
}

class Matcher {
  private furthest = 0;
  private expected: Expected[] = [];
  private readonly reserved: ReadonlySet<string>;
  /** A line cannot make the matcher try without end. */
  private budget = 20_000;

  constructor(
    private readonly request: MatchRequest,
    private readonly strict: boolean,
  ) {
    this.furthest = request.from;
    this.reserved = literalWords(request.pattern);
  }

  run(): Match | undefined {
    const start: State = { at: this.request.from, values: {}, log: undefined, problems: 0 };
    const end = this.match(this.request.pattern, start, (s) => {
      if (s.at === this.request.terms.length) return s;
      this.miss(s.at, { kind: 'end' });
      return undefined;
    });
    return end && { values: end.values, ...collect(end.log) };
  }

  stop(): Stop {
    return { at: this.furthest, expected: this.expected };
  }

  private miss(at: number, expected: Expected): undefined {
    if (at > this.furthest) {
      this.furthest = at;
      this.expected = [];
    }
    if (at === this.furthest) this.expected.push(expected);
    return undefined;
  }

  private match(pattern: Shape, s: State, next: Next): State | undefined {
    if (this.budget-- <= 0) return undefined;
    switch (pattern.kind) {
      case 'word':
        return this.words(pattern.words, pattern.flag, s, next);
      case 'symbol': {
        const term = this.term(s);
        return term?.kind === 'symbol' && term.text === pattern.symbol
          ? next(this.took(s, 1, {}, { pieces: [{ span: term, kind: 'operator', slot: undefined }] }))
          : this.miss(s.at, { kind: 'symbol', symbol: pattern.symbol });
      }
      case 'sequence':
        return this.sequence(pattern.items, 0, s, next);
      case 'optional':
        return this.match(pattern.item, s, next) ?? next(s);
      case 'either': {
        for (const item of pattern.items) {
          const found = this.match(item, s, next);
          if (found) return found;
        }
        return undefined;
      }
      case 'any order':
        return this.anyOrder(pattern.items, s, next);
      case 'list':
        return this.list(pattern.slot, pattern.item, [], s, next);
      case 'group': {
        const outer = s.values;
        return this.match(pattern.item, { ...s, values: {} }, (inner) =>
          next({ ...inner, values: { ...outer, [pattern.slot]: inner.values } }),
        );
      }
      case 'quantity':
        return this.quantity(pattern.slot, pattern.rule, s, next);
      case 'expression':
        return this.anyExpression(pattern.slot, s, next);
      case 'choice':
        return this.choice(pattern.slot, pattern.words, s, next);
      case 'reference':
        return pattern.kinds[0] === 'axle'
          ? this.axle(pattern.slot, s, next)
          : this.reference(pattern.slot, pattern.kinds, s, next);
      case 'part':
        return this.part(pattern.slot, pattern.of, s, next);
      case 'name':
        return this.written(pattern.slot, s, next, (t) => t.kind === 'word', 'name', {
          kind: 'name',
          label: pattern.label,
        });
      case 'text':
        return this.written(pattern.slot, s, next, (t) => t.kind === 'text', 'text', {
          kind: 'text',
          label: pattern.label,
        });
      case 'size':
        return this.written(pattern.slot, s, next, (t) => t.kind === 'size', 'choice', { kind: 'size' });
      case 'date':
        return this.date(pattern.slot, s, next);
      case 'rule':
        return this.rule(pattern.slot, s, next);
      case 'arguments': {
        const read = matchArguments(
          this.request.terms,
          s.at,
          this.request.scope,
          s.values,
          this.request.text,
        );
        if (!read) return this.miss(s.at, { kind: 'symbol', symbol: '(' });
        if (this.strict && read.problems.length > 0) return undefined;
        return next(this.took(s, read.next - s.at, { [pattern.slot]: read.values }, read));
      }
    }
  }

  private sequence(items: readonly Shape[], index: number, s: State, next: Next): State | undefined {
    const item = items[index];
    return item ? this.match(item, s, (after) => this.sequence(items, index + 1, after, next)) : next(s);
  }

  private words(words: readonly string[], flag: string | undefined, s: State, next: Next): State | undefined {
    for (const text of words) {
      const length = this.spelled(text, s.at);
      if (length === 0) {
        this.miss(s.at, { kind: 'word', word: text });
        continue;
      }
      return next(
        this.took(s, length, flag ? { [flag]: true } : {}, {
          pieces: [{ span: this.span(s.at, length), kind: 'word', slot: flag }],
        }),
      );
    }
    return undefined;
  }

  /** How many terms spell these words, from a place on; 0 if they do not. */
  private spelled(text: string, at: number): number {
    const words = text.split(' ');
    return words.every((w, i) => {
      const t = this.request.terms[at + i];
      return t?.kind === 'word' && t.text === w;
    })
      ? words.length
      : 0;
  }

  private anyOrder(items: readonly Shape[], s: State, next: Next): State | undefined {
    const comma = this.term(s)?.text === ',' ? this.took(s, 1, {}, {}) : s;
    for (const [i, item] of items.entries()) {
      const rest = items.filter((_, j) => j !== i);
      const found = this.match(item, comma, (after) =>
        after.at > comma.at ? this.anyOrder(rest, after, next) : undefined,
      );
      if (found) return found;
    }
    return next(s);
  }

  private list(slot: string, item: Shape, got: readonly unknown[], s: State, next: Next): State | undefined {
    const outer = s.values;
    return this.match(item, { ...s, values: {} }, (inner) => {
      const all = [...got, inner.values];
      const comma = this.term(inner);
      if (comma?.kind === 'symbol' && comma.text === ',') {
        const more = this.list(slot, item, all, this.took({ ...inner, values: outer }, 1, {}, {}), next);
        if (more) return more;
      } else this.miss(inner.at, { kind: 'symbol', symbol: ',' });
      return next({ ...inner, values: { ...outer, [slot]: all } });
    });
  }

  private quantity(slot: string, rule: QuantityRule, s: State, next: Next): State | undefined {
    const expected: Expected = { kind: 'quantity', slot, dimensions: rule.dimensions, range: rule.range };
    const read = parseExpression(s.at, this.expression(rule, false));
    if (!read) return this.miss(s.at, expected);
    const lastPiece = read.pieces.at(-1);
    if (lastPiece?.kind === 'number') this.miss(read.next, { kind: 'unit', dimensions: rule.dimensions });
    const problems = [
      ...read.problems,
      ...(read.problems.length > 0
        ? []
        : checkQuantity(read.expression, rule, this.request.scope, (e) => this.textOf(e.span))),
    ];
    if (this.strict && problems.length > 0) return undefined;
    const value = {
      expression: read.expression,
      dimension: dimensionFor(read.expression, rule),
      span: read.expression.span,
    };
    const pieces = read.pieces.map((p) => ({
      ...p,
      slot,
      dimension: p.dimension ?? rule.dimensions[0] ?? 'count',
    }));
    return next(this.took(s, read.next - s.at, { [slot]: value }, { ...read, problems, pieces }));
  }

  private anyExpression(slot: string, s: State, next: Next): State | undefined {
    const rule: QuantityRule = { dimensions: [], range: true };
    const read = parseExpression(s.at, this.expression(rule, true));
    if (!read) return this.miss(s.at, { kind: 'quantity', slot, dimensions: [], range: true });
    if (this.strict && read.problems.length > 0) return undefined;
    return next(this.took(s, read.next - s.at, { [slot]: read.expression }, read));
  }

  private expression(rule: QuantityRule, free: boolean) {
    const { terms, scope } = this.request;
    return { terms, scope, rule, free, reserved: this.reserved };
  }

  private choice(slot: string, words: readonly string[], s: State, next: Next): State | undefined {
    const found = [...words].sort((a, b) => b.length - a.length).find((w) => this.spelled(w, s.at) > 0);
    if (found === undefined) {
      for (const word of words) this.miss(s.at, { kind: 'word', word });
      return undefined;
    }
    const length = this.spelled(found, s.at);
    const span = this.span(s.at, length);
    return next(
      this.took(s, length, { [slot]: { text: found, span } }, { pieces: [{ span, kind: 'choice', slot }] }),
    );
  }

  private reference(slot: string, kinds: Reference['kinds'], s: State, next: Next): State | undefined {
    const { scope } = this.request;
    const term = this.term(s);
    this.miss(s.at, { kind: 'reference', kinds });
    if (term?.kind !== 'word') return undefined;
    // A group's support is named `East.A`; the dot is no term of its own in a word.
    const dotted = this.dotted(s.at);
    const text = dotted?.text ?? term.text;
    const span = dotted?.span ?? term;
    const target = scope.find(text, [...kinds, 'parameter']);
    if (!target && (this.strict || this.reserved.has(text))) return undefined;
    const reference: Reference = { uri: scope.uri, span, text, kinds, target };
    const problems = target ? [] : [unknownName(reference, scope, undefined)];
    return next(
      this.took(s, dotted?.length ?? 1, { [slot]: reference }, this.referred(reference, slot, problems)),
    );
  }

  private dotted(at: number): (Written & { readonly length: number }) | undefined {
    const [a, dot, b] = this.request.terms.slice(at, at + 3);
    if (!a || b?.kind !== 'word' || dot?.text !== '.' || a.end !== dot.start || dot.end !== b.start)
      return undefined;
    return { text: `${a.text}.${b.text}`, span: { start: a.start, end: b.end }, length: 3 };
  }

  private part(slot: string, of: string | undefined, s: State, next: Next): State | undefined {
    const { scope } = this.request;
    const vehicle = targetOf(of === undefined ? undefined : s.values[of]);
    this.miss(s.at, { kind: 'part', vehicle: referenceIn(of === undefined ? undefined : s.values[of]) });
    const term = this.term(s);
    if (term?.kind !== 'word') return undefined;
    const given = of === undefined ? undefined : vehicle;
    const target = scope.part(given, term.text) ?? scope.find(term.text, ['parameter']);
    const said = of !== undefined && s.values[of] !== undefined;
    // A vehicle that is unknown itself, or known only later, has no parts to compare with.
    const open = said ? !vehicle || vehicle.kind === 'parameter' : scope.openParts;
    if (!target && (this.reserved.has(term.text) || (this.strict && !open))) return undefined;
    const reference: Reference = { uri: scope.uri, span: term, text: term.text, kinds: ['part'], target };
    const problems = target || open ? [] : [unknownName(reference, scope, given)];
    return next(this.took(s, 1, { [slot]: reference }, this.referred(reference, slot, problems)));
  }

  /** `axle 2`, `axle drive`: the word axle may be left out. */
  private axle(slot: string, s: State, next: Next): State | undefined {
    const { scope } = this.request;
    this.miss(s.at, { kind: 'reference', kinds: ['axle'] });
    const said = this.term(s)?.text === 'axle' ? 1 : 0;
    const term = this.request.terms[s.at + said];
    if (!term || !(term.kind === 'number' || term.kind === 'word')) return undefined;
    if (said === 0 && term.kind === 'number') return undefined;
    const vehicle = targetOf(s.values.vehicle) ?? scope.vehicle;
    const target = scope.axle(vehicle, term.text);
    if (!target && (this.strict || (said === 0 && this.reserved.has(term.text)))) return undefined;
    if (!target && said === 0) return undefined;
    const reference: Reference = { uri: scope.uri, span: term, text: term.text, kinds: ['axle'], target };
    const problems = target ? [] : [unknownName(reference, scope, vehicle)];
    const logged = this.referred(reference, slot, problems);
    const word: Piece[] = said ? [{ span: this.span(s.at, 1), kind: 'word', slot: undefined }] : [];
    return next(
      this.took(s, said + 1, { [slot]: reference }, { ...logged, pieces: [...word, ...logged.pieces] }),
    );
  }

  private referred(reference: Reference, slot: string, problems: readonly LanguageProblem[]) {
    return {
      pieces: [{ span: reference.span, kind: 'reference' as const, slot, reference }],
      references: [reference],
      problems,
    };
  }

  private written(
    slot: string,
    s: State,
    next: Next,
    fits: (t: Term) => boolean,
    kind: Piece['kind'],
    expected: Expected,
  ): State | undefined {
    const term = this.term(s);
    if (!term || !fits(term)) return this.miss(s.at, expected);
    const text = term.kind === 'text' ? unquoted(term.text) : term.text;
    return next(this.took(s, 1, { [slot]: { text, span: term } }, { pieces: [{ span: term, kind, slot }] }));
  }

  private date(slot: string, s: State, next: Next): State | undefined {
    const term = this.term(s);
    if (!term || !(term.kind === 'date' || (!this.strict && term.kind === 'number')))
      return this.miss(s.at, { kind: 'date' });
    const good = term.kind === 'date' && isDate(term.text);
    if (!good && this.strict) return undefined;
    const problems = good ? [] : [problem('date-malformed', term, { text: term.text })];
    return next(
      this.took(
        s,
        1,
        { [slot]: { text: term.text, span: term } },
        { pieces: [{ span: term, kind: 'choice', slot }], problems },
      ),
    );
  }

  private rule(slot: string, s: State, next: Next): State | undefined {
    const term = this.term(s);
    if (term?.kind !== 'word') return this.miss(s.at, { kind: 'rule' });
    const known = this.request.scope.rules.has(term.text);
    if (!known) this.miss(s.at, { kind: 'rule' });
    if (!known && (this.strict || this.reserved.has(term.text))) return undefined;
    const problems = known ? [] : [unknownRule(term, this.request.scope)];
    return next(
      this.took(
        s,
        1,
        { [slot]: { text: term.text, span: term } },
        { pieces: [{ span: term, kind: 'rule', slot }], problems },
      ),
    );
  }

  private took(
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

  private term(s: State): Term | undefined {
    return this.request.terms[s.at];
  }

  private span(at: number, length: number): Span {
    const first = this.request.terms[at];
    const last = this.request.terms[at + length - 1];
    return { start: first?.start ?? 0, end: last?.end ?? 0 };
  }

  private textOf(span: Span): string {
    return this.request.text.slice(span.start, span.end).trim();
  }
}

function unknownRule(term: Term, scope: NameScope): LanguageProblem {
  const near = closest(term.text, [...scope.rules]);
  return near === undefined
    ? problem('unknown-rule', term, { text: term.text })
    : problem(
        'unknown-rule.near',
        term,
        { text: term.text, near },
        {
          fixes: [replace(say('unknown-name.fix', { near }), term, near)],
        },
      );
}

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

/** Every word that the pattern itself may say: never a name or a unit where it stands in this line. */
function literalWords(pattern: Shape): ReadonlySet<string> {
  const known = literals.get(pattern);
  if (known) return known;
  const found = new Set<string>();
  const walk = (p: Shape): void => {
    switch (p.kind) {
      case 'word':
      case 'choice':
        for (const text of p.words) for (const w of text.split(' ')) found.add(w);
        break;
      case 'sequence':
      case 'either':
      case 'any order':
        p.items.forEach(walk);
        break;
      case 'optional':
      case 'list':
      case 'group':
        walk(p.item);
        break;
      case 'quantity':
        if (p.rule.range) found.add('to');
        break;
      default:
    }
  };
  walk(pattern);
  literals.set(pattern, found);
  return found;
}

const literals = new WeakMap<Shape, ReadonlySet<string>>();

const isReference = (value: unknown): value is Reference =>
  typeof value === 'object' && value !== null && 'kinds' in value && 'target' in value;

const referenceIn = (value: unknown): Reference | undefined => (isReference(value) ? value : undefined);
const targetOf = (value: unknown): Declaration | undefined => referenceIn(value)?.target;

/** Which of the dimensions that are due was written. */
const dimensionFor = (e: Expression, rule: QuantityRule): Dimension => {
  const unit = writtenUnit(e);
  return rule.dimensions.find((d) => d === unit) ?? rule.dimensions[0] ?? 'count';
};

const writtenUnit = (e: Expression): Dimension | undefined => {
  const text = unitOf(e);
  return text === undefined ? undefined : findUnit(text)?.dimension;
};

/** Without the quotes, and without the missing one. */
export const unquoted = (text: string): string => text.replace(/^"/, '').replace(/"$/, '');

const isDate = (text: string): boolean => {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  const days = [
    31,
    year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28,
    31,
    30,
    31,
    30,
    31,
    31,
    30,
    31,
    30,
    31,
  ];
  return month >= 1 && month <= 12 && day >= 1 && day <= (days[month - 1] ?? 0);
};

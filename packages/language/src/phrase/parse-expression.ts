import { count, name } from '@cribwright/messages';
import { append, type Span, type Term } from '@cribwright/syntax/internal';
import { compound, mayFollow, quote } from '@cribwright/units';
import type { MatchedSpan, Reference } from '../bound/bound-file.js';
import type { Kind } from '../kind/kind.js';
import { measuredSupports } from '../kind/support-kinds.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import {
  type Expression,
  type FigureWord,
  figureWords,
  type NumberExpression,
  type WrittenUnit,
} from './expression.js';
import type { ExpressionRequest } from './expression-request.js';
import { isMark, markAt } from './marks.js';
import { numberProblem, orderProblem } from './number-problem.js';
import { readNumber } from './number-term.js';
import { readUnit } from './read-unit.js';
import { unknownName } from './unknown-name.js';

export interface ParsedExpression {
  readonly expression: Expression;
  readonly next: number;
  readonly problems: readonly LanguageProblem[];
  readonly pieces: readonly MatchedSpan[];
  readonly references: readonly Reference[];
}

const measurable: readonly Kind[] = ['vehicle', 'parameter', 'timber', ...measuredSupports];

/** More than anyone adds up by hand; the tree that a calculation makes must stay shallow. */
const mostPieces = 200;

/** Reads the longest calculation that starts at a term, or `undefined` where none does. */
export function parseExpression(at: number, request: ExpressionRequest): ParsedExpression | undefined {
  const reader = new ExpressionReader(request, at);
  const expression = reader.top(request.rule.range);
  if (!expression) return undefined;
  const { problems, pieces, references } = reader;
  return { expression, next: reader.at, problems, pieces, references };
}

class ExpressionReader {
  readonly problems: LanguageProblem[] = [];
  readonly pieces: MatchedSpan[] = [];
  readonly references: Reference[] = [];
  private depth = 0;
  private operators = 0;

  constructor(
    private readonly request: ExpressionRequest,
    public at: number,
  ) {}

  top(range: boolean): Expression | undefined {
    const first = this.sum();
    if (!first || !range) return first;
    const mark = this.mark();
    if (this.word('to')) {
      const second = this.sum();
      if (second) {
        return { kind: 'range', low: first, high: second, span: join(first.span, second.span) };
      }
      this.reset(mark);
    } else if (this.plusMinus()) {
      const by = this.sum();
      if (by) return { kind: 'tolerance', middle: first, by, span: join(first.span, by.span) };
      this.reset(mark);
    }
    return first;
  }

  private sum(): Expression | undefined {
    return this.chain(['+', '-'], () => this.product());
  }

  private product(): Expression | undefined {
    return this.chain(['*', '/'], () => this.unary());
  }

  private chain(operators: readonly string[], next: () => Expression | undefined): Expression | undefined {
    let left = next();
    while (left) {
      const mark = this.mark();
      const sign = this.peek();
      if (sign?.kind !== 'symbol' || !operators.includes(sign.text) || this.isPlusMinus()) return left;
      this.at++;
      this.pieces.push({ span: sign, kind: 'operator', slot: undefined });
      const right = next();
      if (!right) {
        this.reset(mark);
        return left;
      }
      this.operators++;
      if (this.operators >= mostPieces) {
        // Read to its end all the same, but not built up: so there is one message, at the place.
        if (this.operators === mostPieces)
          this.problems.push(problem('calculation-too-long', right.span, { most: count(mostPieces) }));
        continue;
      }
      const slip = sign.text === '-' ? feetDash(this.request, left, sign, right) : undefined;
      if (slip) this.problems.push(slip);
      const operator = sign.text as '+' | '-' | '*' | '/';
      left = { kind: 'binary', operator, operatorSpan: sign, left, right, span: join(left.span, right.span) };
    }
    return left;
  }

  private unary(): Expression | undefined {
    const sign = this.peek();
    if (sign?.text !== '-' || sign.kind !== 'symbol') return this.primary();
    const mark = this.mark();
    this.at++;
    const of = this.primary();
    if (of) return { kind: 'negative', of, span: join(sign, of.span) };
    this.reset(mark);
    return undefined;
  }

  private primary(): Expression | undefined {
    const term = this.peek();
    if (!term) return undefined;
    if (term.kind === 'number') return this.quantity();
    if (term.kind === 'symbol' && term.text === '(') return this.group(term);
    if (term.kind === 'word') return this.named(term);
    return undefined;
  }

  private group(open: Term): Expression | undefined {
    if (this.depth >= 20) return undefined;
    const mark = this.mark();
    this.at++;
    this.depth++;
    const of = this.top(true);
    this.depth--;
    const close = this.peek();
    if (of && close?.text === ')') {
      this.at++;
      return { kind: 'group', of, span: join(open, close) };
    }
    this.reset(mark);
    return undefined;
  }

  /** A number with its unit, and what may follow in a smaller unit. */
  private quantity(): Expression | undefined {
    const first = this.number();
    if (!first) return undefined;
    const pieces = [first];
    let last = first;
    while (last.unit) {
      const mark = this.mark();
      const dash = this.markedDash(last);
      if (dash) this.at++;
      const next = this.peek()?.kind === 'number' ? this.number() : undefined;
      const unit = next?.unit?.unit;
      if (next && !unit && isMark(this.request.terms[mark[0] - 1])) {
        this.problems.push(inchMarkMissing(this.request, first, next));
        pieces.push(next);
        break;
      }
      const order = unit && (mayFollow(last.unit.unit, unit) || mayFollow(unit, last.unit.unit));
      if (!next || !order || (dash && !isMark(this.request.terms[this.at - 1]))) {
        this.reset(mark);
        break;
      }
      pieces.push(next);
      last = next;
    }
    if (pieces.length === 1) return first;
    const span = join(first.span, last.span);
    const parts = pieces.flatMap((p) =>
      p.unit && p.value !== undefined
        ? [{ number: p.value, unit: p.unit.unit, from: p.span.start, to: p.span.end }]
        : [],
    );
    // What is malformed was told where it stands.
    const whole = parts.length === pieces.length ? compound(parts) : undefined;
    if (whole && !whole.ok && whole.problem.order)
      this.problems.push(orderProblem(whole.problem.order, span));
    return { kind: 'compound', pieces, span };
  }

  /** The dash of `19'-6"`, where it touches the mark before it and the number after it. */
  private markedDash(last: NumberExpression): boolean {
    const { terms } = this.request;
    const [before, dash, after] = [terms[this.at - 1], terms[this.at], terms[this.at + 1]];
    return isMark(before) && dash?.text === '-' && dash.start === last.span.end && after?.start === dash.end;
  }

  private number(): NumberExpression | undefined {
    const read = readNumber(this.request.terms, this.at);
    if (!read) return undefined;
    this.at = read.next;
    this.pieces.push({ span: read.span, kind: 'number', slot: undefined });
    // As a tape is read out: `6-3/4"`. An inch mark leaves no doubt.
    const tape = read.fault === 'dash' && markAt(this.request.terms, read.next, read.span)?.unit === 'in';
    if (read.fault !== undefined && !tape) {
      const fixes =
        read.fix === undefined
          ? []
          : [replace(problemMessage('number-malformed--fix', { near: name(read.fix) }), read.span, read.fix)];
      this.problems.push(numberProblem(read.fault, read.span, read.text, read.fix, fixes));
    }
    const taken = readUnit(this.request, this.at, read.span);
    this.at += taken.length;
    append(this.problems, taken.problems);
    append(this.pieces, taken.pieces);
    const { unit } = taken;
    if (unit) append(this.problems, pointOfThousands(read.text, read.span, unit));
    const span = unit ? join(read.span, unit.span) : read.span;
    return { kind: 'number', value: read.value, unit, span };
  }

  private named(term: Term): Expression | undefined {
    const { scope, reserved, free } = this.request;
    const next = this.request.terms[this.at + 1];
    const afterNext = this.request.terms[this.at + 2];
    const subject = scope.find(term.text, measurable);
    if (subject && isFigure(next)) return this.figure(this.refer(term, measurable, subject), undefined, next);
    if (subject?.kind === 'vehicle' && next && isFigure(afterNext)) {
      const found = scope.part(subject, next.text);
      const of = this.refer(term, measurable, subject);
      const part: Reference = { uri: scope.uri, span: next, text: next.text, kinds: ['part'], target: found };
      this.references.push(part);
      this.pieces.push({ span: next, kind: 'reference', slot: undefined, reference: part });
      if (!found) this.problems.push(unknownName(part, scope, subject));
      this.at++;
      return this.figure(of, part, afterNext);
    }
    const value = scope.find(term.text, ['value', 'parameter']);
    if (value) {
      const reference = this.refer(term, ['value', 'parameter'], value);
      return { kind: 'named', reference, span: term };
    }
    const inside = this.depth > 0 || this.references.length > 0 || this.pieces.length > 0;
    const operatorNext = next?.kind === 'symbol' && '+-*/'.includes(next.text);
    if (reserved.has(term.text) || !(free || inside || isFigure(next) || operatorNext)) return undefined;
    if (isFigure(next)) return this.figure(this.missing(term, measurable), undefined, next);
    const reference = this.missing(term, ['value', 'parameter']);
    return { kind: 'named', reference, span: term };
  }

  private missing(term: Term, kinds: readonly Kind[]): Reference {
    const reference = this.refer(term, kinds, undefined);
    this.problems.push(unknownName(reference, this.request.scope, undefined));
    return reference;
  }

  private figure(subject: Reference, part: Reference | undefined, word: Term): Expression {
    this.at++;
    this.pieces.push({ span: word, kind: 'word', slot: undefined });
    return {
      kind: 'figure',
      subject,
      part,
      figure: word.text as FigureWord,
      figureSpan: word,
      span: join(subject.span, word),
    };
  }

  private refer(term: Term, kinds: readonly Kind[], target: Reference['target']): Reference {
    const reference: Reference = { uri: this.request.scope.uri, span: term, text: term.text, kinds, target };
    this.at++;
    this.references.push(reference);
    this.pieces.push({ span: term, kind: 'reference', slot: undefined, reference });
    return reference;
  }

  private word(text: string): boolean {
    const term = this.peek();
    if (term?.kind !== 'word' || term.text !== text) return false;
    this.at++;
    this.pieces.push({ span: term, kind: 'word', slot: undefined });
    return true;
  }

  private isPlusMinus(): boolean {
    return this.plusMinusLength() > 0;
  }

  /** Terms that `±`, `+-` or `+/-` takes; 0 where none stands. */
  private plusMinusLength(): number {
    const run = this.request.terms.slice(this.at, this.at + 3);
    for (const sign of ['±', '+-', '+/-']) {
      const signs = run.slice(0, sign.length);
      const touch = signs.every((t, i) => i === 0 || signs[i - 1]?.end === t.start);
      if (touch && signs.map((t) => t.text).join('') === sign) return sign.length;
    }
    return 0;
  }

  private plusMinus(): boolean {
    if (!this.isPlusMinus()) return false;
    const length = this.plusMinusLength();
    for (const term of this.request.terms.slice(this.at, this.at + length))
      this.pieces.push({ span: term, kind: 'operator', slot: undefined });
    this.at += length;
    return true;
  }

  private peek(): Term | undefined {
    return this.request.terms[this.at];
  }

  private mark() {
    return [this.at, this.problems.length, this.pieces.length, this.references.length] as const;
  }

  private reset([at, problems, pieces, references]: readonly [number, number, number, number]): void {
    this.at = at;
    this.problems.length = problems;
    this.pieces.length = pieces;
    this.references.length = references;
  }
}

/** `3'2`: the second number has no mark. */
function inchMarkMissing(
  { text }: ExpressionRequest,
  first: NumberExpression,
  next: NumberExpression,
): LanguageProblem {
  const feet = text.slice(first.span.start, first.unit?.span.start);
  const near = `${feet} ft ${text.slice(next.span.start, next.span.end)} in`;
  const span = join(first.span, next.span);
  const fixes = [replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near)];
  return problem('feet-mark', span, { near: name(near) }, { fixes });
}

/** `3 ft-2 in`, and `12-6` where a length is due: a reader takes it for feet and inches, a calculation for a minus. */
function feetDash(
  { text, rule, free }: ExpressionRequest,
  left: Expression,
  sign: Term,
  right: Expression,
): LanguageProblem | undefined {
  if (left.kind !== 'number' || right.kind !== 'number') return undefined;
  if (left.span.end !== sign.start || sign.end !== right.span.start) return undefined;
  const [a, b] = [numberOf(left, text), numberOf(right, text)];
  const bare = !left.unit && !right.unit && (free || rule.dimensions.includes('length'));
  const units = left.unit && right.unit && mayFollow(left.unit.unit, right.unit.unit);
  const whole = Number.isInteger(left.value) && (right.value ?? 12) < 12;
  if (!(units || (bare && whole))) return undefined;
  const near = `${a} ${left.unit?.text ?? 'ft'} ${b} ${right.unit?.text ?? 'in'}`;
  const minus = `${text.slice(left.span.start, left.span.end)} - ${text.slice(right.span.start, right.span.end)}`;
  const span = join(left.span, right.span);
  const fixes = [near, ...(units || free ? [minus] : [])].map((one) =>
    replace(problemMessage('number-malformed--fix', { near: name(one) }), span, one),
  );
  return problem('feet-dash', span, { near: name(near), minus: name(minus) }, { fixes });
}

const numberOf = (e: NumberExpression, text: string): string =>
  text.slice(e.span.start, e.unit?.span.start ?? e.span.end).trim();

/** Where a point may part the thousands: `9.000 kg` is nine tonnes to one reader and nine kilograms to another. */
const heavy = ['lb', 'kg', 'N'];

function pointOfThousands(text: string, span: Span, { unit, text: written }: WrittenUnit): LanguageProblem[] {
  if (!heavy.includes(unit.id) || !/^[1-9]\d{0,2}\.\d{3}$/.test(text)) return [];
  const thousands = text.replace('.', ',');
  const plain = `${Number(text)}`;
  const fixes = [thousands, plain].map((near) =>
    replace(problemMessage('number-malformed--fix', { near: name(`${near} ${written}`) }), span, near),
  );
  return [
    problem(
      'number-malformed--point',
      span,
      {
        text: name(quote(`${text} ${written}`)),
        thousands: name(`${thousands} ${written}`),
        plain: name(`${plain} ${written}`),
      },
      { fixes },
    ),
  ];
}

const isFigure = (t: Term | undefined): t is Term =>
  t?.kind === 'word' && figureWords.some((f) => f === t.text);

export const join = (a: Span, b: Span): Span => ({ start: a.start, end: b.end });

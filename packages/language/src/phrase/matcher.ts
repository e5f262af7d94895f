import type { Match } from '../bound/bound-file.js';
import type { Shape } from '../bound/shape.js';
import { matchArguments } from './match-arguments.js';
import { axle, part, reference, rule } from './match-names.js';
import { anyExpression, quantity } from './match-quantity.js';
import { choice, date, words, written } from './match-words.js';
import {
  Matching,
  type MatchRequest,
  type MatchResult,
  matchOf,
  type Next,
  type State,
  type Stop,
} from './matching.js';

export type { MatchRequest, Stop } from './matching.js';

/**
 * Reads the rest of a line by its pattern. First strictly: every name known and every unit right. Then leniently, so
 * that a line with a slip in it yields all it can, and a problem at the slip.
 */
export function matchLine(request: MatchRequest): MatchResult {
  const strict = new Matching(request, true);
  const exact = run(strict);
  if (exact) return { match: exact, stop: strict.stop };
  const lenient = new Matching(request, false);
  const found = run(lenient);
  // Right as far as it goes: what is still due says more than that another reading wants another kind of thing.
  if (endsTooEarly(strict.stop, request) && found?.problems.some((p) => p.code === 'wrong-kind'))
    return { match: undefined, stop: strict.stop };
  return { match: found, stop: lenient.stop };
}

const endsTooEarly = ({ at, expected }: Stop, { terms }: MatchRequest): boolean =>
  at === terms.length && !expected.some((e) => e.kind === 'unit');

function run(m: Matching): Match | undefined {
  const start: State = { at: m.request.from, values: {}, log: undefined, problems: 0 };
  const end = match(m, m.request.pattern, start, (s) =>
    s.at === m.request.terms.length ? s : m.miss(s.at, { kind: 'end' }),
  );
  return end && matchOf(end);
}

function match(m: Matching, pattern: Shape, s: State, next: Next): State | undefined {
  if (m.spent()) return undefined;
  switch (pattern.kind) {
    case 'word':
      return words(m, pattern.words, pattern.flag, s, next);
    case 'symbol': {
      const term = m.term(s);
      return term?.kind === 'symbol' && term.text === pattern.symbol
        ? next(m.took(s, 1, {}, { pieces: [{ span: term, kind: 'operator', slot: undefined }] }))
        : m.miss(s.at, { kind: 'symbol', symbol: pattern.symbol });
    }
    case 'sequence':
      return sequence(m, pattern.items, 0, s, next);
    case 'optional':
      return match(m, pattern.item, s, next) ?? next(s);
    case 'either': {
      for (const item of pattern.items) {
        const found = match(m, item, s, next);
        if (found) return found;
      }
      return undefined;
    }
    case 'any order':
      return anyOrder(m, pattern.items, s, next);
    case 'list':
      return list(m, pattern.slot, pattern.item, [], s, next);
    case 'group': {
      const outer = s.values;
      return match(m, pattern.item, { ...s, values: {} }, (inner) =>
        next({ ...inner, values: { ...outer, [pattern.slot]: inner.values } }),
      );
    }
    case 'quantity':
      return quantity(m, pattern.slot, pattern.rule, s, next);
    case 'expression':
      return anyExpression(m, pattern.slot, s, next);
    case 'choice':
      return choice(m, pattern.slot, pattern.words, s, next);
    case 'reference':
      return pattern.kinds[0] === 'axle'
        ? axle(m, pattern.slot, s, next)
        : reference(m, pattern.slot, pattern.kinds, s, next);
    case 'part':
      return part(m, pattern.slot, pattern.of, s, next);
    case 'name':
      return written(m, pattern.slot, s, next, (t) => t.kind === 'word', 'name', {
        kind: 'name',
        label: pattern.label,
      });
    case 'text':
      return written(m, pattern.slot, s, next, (t) => t.kind === 'text', 'text', {
        kind: 'text',
        label: pattern.label,
      });
    case 'size':
      return written(m, pattern.slot, s, next, (t) => t.kind === 'size', 'choice', { kind: 'size' });
    case 'date':
      return date(m, pattern.slot, s, next);
    case 'rule':
      return rule(m, pattern.slot, s, next);
    case 'arguments': {
      const read = matchArguments(m.request.terms, s.at, m.request.scope, s.values, m.request.text);
      if (!read) return m.miss(s.at, { kind: 'symbol', symbol: '(' });
      if (m.strict && read.problems.length > 0) return undefined;
      return next(m.took(s, read.next - s.at, { [pattern.slot]: read.values }, read));
    }
  }
}

function sequence(
  m: Matching,
  items: readonly Shape[],
  index: number,
  s: State,
  next: Next,
): State | undefined {
  const item = items[index];
  return item ? match(m, item, s, (after) => sequence(m, items, index + 1, after, next)) : next(s);
}

function anyOrder(m: Matching, items: readonly Shape[], s: State, next: Next): State | undefined {
  const comma = m.term(s)?.text === ',' ? m.took(s, 1, {}, {}) : s;
  for (const [i, item] of items.entries()) {
    const rest = items.filter((_, j) => j !== i);
    const found = match(m, item, comma, (after) =>
      after.at > comma.at ? anyOrder(m, rest, after, next) : undefined,
    );
    if (found) return found;
  }
  return next(s);
}

function list(
  m: Matching,
  slot: string,
  item: Shape,
  got: readonly unknown[],
  s: State,
  next: Next,
): State | undefined {
  const outer = s.values;
  return match(m, item, { ...s, values: {} }, (inner) => {
    const all = [...got, inner.values];
    const comma = m.term(inner);
    if (comma?.kind === 'symbol' && comma.text === ',') {
      const more = list(m, slot, item, all, m.took({ ...inner, values: outer }, 1, {}, {}), next);
      if (more) return more;
    } else m.miss(inner.at, { kind: 'symbol', symbol: ',' });
    return next({ ...inner, values: { ...outer, [slot]: all } });
  });
}

import { name } from '@cribwright/messages';
import type { Term } from '@cribwright/syntax/internal';
import type { MatchedSpan } from '../bound/bound-file.js';
import { problem } from '../problems/problem.js';
import type { Expected } from './match.js';
import type { Matching, Next, State } from './matching.js';
import { unquoted } from './unquoted.js';

/** A fixed word, or one of its other spellings. */
export function words(
  m: Matching,
  words: readonly string[],
  flag: string | undefined,
  s: State,
  next: Next,
): State | undefined {
  for (const text of words) {
    const length = m.spelled(text, s.at);
    if (length === 0) {
      m.miss(s.at, { kind: 'word', word: text });
      continue;
    }
    return next(
      m.took(s, length, flag ? { [flag]: true } : {}, {
        pieces: [{ span: m.span(s.at, length), kind: 'word', slot: flag }],
      }),
    );
  }
  return undefined;
}

/** One word out of several, the longest that fits. */
export function choice(
  m: Matching,
  slot: string,
  words: readonly string[],
  s: State,
  next: Next,
): State | undefined {
  const found = [...words].sort((a, b) => b.length - a.length).find((w) => m.spelled(w, s.at) > 0);
  if (found === undefined) {
    for (const word of words) m.miss(s.at, { kind: 'word', word });
    return undefined;
  }
  const length = m.spelled(found, s.at);
  const span = m.span(s.at, length);
  return next(
    m.took(s, length, { [slot]: { text: found, span } }, { pieces: [{ span, kind: 'choice', slot }] }),
  );
}

/** A single term of some kind. */
export function written(
  m: Matching,
  slot: string,
  s: State,
  next: Next,
  fits: (t: Term) => boolean,
  kind: MatchedSpan['kind'],
  expected: Expected,
): State | undefined {
  const term = m.term(s);
  if (!term || !fits(term)) return m.miss(s.at, expected);
  const text = term.kind === 'text' ? unquoted(term.text) : term.text;
  return next(m.took(s, 1, { [slot]: { text, span: term } }, { pieces: [{ span: term, kind, slot }] }));
}

export function date(m: Matching, slot: string, s: State, next: Next): State | undefined {
  const term = m.term(s);
  if (!term || !(term.kind === 'date' || (!m.strict && term.kind === 'number')))
    return m.miss(s.at, { kind: 'date' });
  const good = term.kind === 'date' && isDate(term.text);
  if (!good && m.strict) return undefined;
  const problems = good ? [] : [problem('date-malformed', term, { text: name(term.text) })];
  return next(
    m.took(
      s,
      1,
      { [slot]: { text: term.text, span: term } },
      { pieces: [{ span: term, kind: 'choice', slot }], problems },
    ),
  );
}

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

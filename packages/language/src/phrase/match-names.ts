import { name } from '@cribwright/messages';
import type { Term } from '@cribwright/syntax/internal';
import { closest } from '@cribwright/units';
import type { Declaration, MatchedSpan, Reference } from '../bound/bound-file.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { parameterKinds } from './match-arguments.js';
import type { Matching, Next, State } from './matching.js';
import type { Written } from './pattern.js';
import { renamedAt } from './renamed-words.js';
import { unknownName } from './unknown-name.js';

export function reference(
  m: Matching,
  slot: string,
  kinds: Reference['kinds'],
  s: State,
  next: Next,
): State | undefined {
  const { scope } = m.request;
  const term = m.term(s);
  m.miss(s.at, { kind: 'reference', kinds });
  if (term?.kind !== 'word') return undefined;
  // A group's support is named `East.A`; the dot is no term of its own in a word.
  const joined = dotted(m, s.at);
  const text = joined?.text ?? term.text;
  const span = joined?.span ?? term;
  const found = scope.find(text, [...kinds, 'parameter']);
  const target = found && takes(found, kinds) ? found : undefined;
  if (!target && (m.strict || m.reserved.has(text))) return undefined;
  const reference: Reference = { uri: scope.uri, span, text, kinds, target };
  const problems = target ? [] : [unknownName(reference, scope, undefined)];
  return next(m.took(s, joined?.length ?? 1, { [slot]: reference }, referred(reference, slot, problems)));
}

/** A parameter stands only for what it was declared to be. */
const takes = (target: Declaration, kinds: Reference['kinds']): boolean => {
  if (target.kind !== 'parameter') return true;
  const word = target.block?.parameters.find((p) => p.declaration === target)?.typeWord ?? '';
  const kind = parameterKinds[word];
  // A part may stand for a vehicle too: it knows which one it belongs to.
  return kind?.kind === 'thing'
    ? kind.kinds.some((k) => kinds.includes(k))
    : kind?.kind === 'part' && kinds.includes('vehicle');
};

function dotted(m: Matching, at: number): (Written & { readonly length: number }) | undefined {
  const [a, dot, b] = m.request.terms.slice(at, at + 3);
  if (!a || b?.kind !== 'word' || dot?.text !== '.' || a.end !== dot.start || dot.end !== b.start)
    return undefined;
  return { text: `${a.text}.${b.text}`, span: { start: a.start, end: b.end }, length: 3 };
}

export function part(
  m: Matching,
  slot: string,
  of: string | undefined,
  s: State,
  next: Next,
): State | undefined {
  const { scope } = m.request;
  const vehicle = targetOf(of === undefined ? undefined : s.values[of]);
  m.miss(s.at, { kind: 'part', vehicle: referenceIn(of === undefined ? undefined : s.values[of]) });
  const term = m.term(s);
  if (term?.kind !== 'word') return undefined;
  const given = of === undefined ? undefined : vehicle;
  const target = scope.part(given, term.text) ?? scope.find(term.text, ['parameter']);
  const said = of !== undefined && s.values[of] !== undefined;
  // A vehicle that is unknown itself, or known only later, has no parts to compare with.
  const open =
    (said ? !vehicle || vehicle.kind === 'parameter' : scope.openParts) || scope.typeUnknown(given);
  if (!target && (m.reserved.has(term.text) || (m.strict && !open))) return undefined;
  const reference: Reference = { uri: scope.uri, span: term, text: term.text, kinds: ['part'], target };
  const problems = target || open ? [] : [unknownName(reference, scope, given)];
  return next(m.took(s, 1, { [slot]: reference }, referred(reference, slot, problems)));
}

/** `axle 2`, `axle drive`: the word axle may be left out. */
export function axle(m: Matching, slot: string, s: State, next: Next): State | undefined {
  const { scope } = m.request;
  m.miss(s.at, { kind: 'reference', kinds: ['axle'] });
  const said = m.term(s)?.text === 'axle' ? 1 : 0;
  const term = m.request.terms[s.at + said];
  if (!term || !(term.kind === 'number' || term.kind === 'word')) return undefined;
  if (said === 0 && term.kind === 'number') return undefined;
  const vehicle = targetOf(s.values.vehicle) ?? scope.vehicle;
  const target = scope.axle(vehicle, term.text);
  if (!target && (m.strict || (said === 0 && m.reserved.has(term.text)))) return undefined;
  if (!target && said === 0) return undefined;
  const reference: Reference = { uri: scope.uri, span: term, text: term.text, kinds: ['axle'], target };
  const problems = target ? [] : [unknownName(reference, scope, vehicle)];
  const logged = referred(reference, slot, problems);
  const word: MatchedSpan[] = said ? [{ span: m.span(s.at, 1), kind: 'word', slot: undefined }] : [];
  return next(m.took(s, said + 1, { [slot]: reference }, { ...logged, pieces: [...word, ...logged.pieces] }));
}

export function rule(m: Matching, slot: string, s: State, next: Next): State | undefined {
  const term = m.term(s);
  if (term?.kind !== 'word') return m.miss(s.at, { kind: 'rule' });
  const known = m.request.scope.rules.has(term.text);
  if (!known) m.miss(s.at, { kind: 'rule' });
  if (!known && (m.strict || m.reserved.has(term.text))) return undefined;
  const problems = known ? [] : [unknownRule(term, m)];
  return next(
    m.took(
      s,
      1,
      { [slot]: { text: term.text, span: term } },
      { pieces: [{ span: term, kind: 'rule', slot }], problems },
    ),
  );
}

function referred(reference: Reference, slot: string, problems: readonly LanguageProblem[]) {
  return {
    pieces: [{ span: reference.span, kind: 'reference' as const, slot, reference }],
    references: [reference],
    problems,
  };
}

function unknownRule(term: Term, m: Matching): LanguageProblem {
  // A word of the line may be meant as well: `expect save`.
  const words = [...m.reserved].filter((w) => w.length > 3);
  const other = renamedAt([term], 0, 'words', (now) => m.reserved.has(now));
  const near = other?.now ?? closest(term.text, [...words, ...m.request.scope.rules]);
  return near === undefined
    ? problem('unknown-rule', term, { text: name(term.text) })
    : problem(
        'unknown-rule--near',
        term,
        { text: name(term.text), near: name(near) },
        {
          fixes: [replace(problemMessage('unknown-name--fix', { near: name(near) }), term, near)],
        },
      );
}

const isReference = (value: unknown): value is Reference =>
  typeof value === 'object' && value !== null && 'kinds' in value && 'target' in value;

const referenceIn = (value: unknown): Reference | undefined => (isReference(value) ? value : undefined);
const targetOf = (value: unknown): Declaration | undefined => referenceIn(value)?.target;

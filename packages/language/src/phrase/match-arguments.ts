import { type List, list, type Message, name as nameHole, term as termOf } from '@cribwright/messages';
import { append, type Term } from '@cribwright/syntax/internal';
import type { MatchedSpan, Reference } from '../bound/bound-file.js';
import type { QuantityRule } from '../bound/shape.js';
import type { Kind } from '../kind/kind.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { argumentExample } from './argument-example.js';
import { checkQuantity } from './check-quantity.js';
import { dueOf } from './dimension-words.js';
import { aKind } from './kind-words.js';
import { parseExpression } from './parse-expression.js';
import type { Argument, ArgumentValue } from './pattern.js';
import type { NameScope } from './scope.js';
import { unknownName } from './unknown-name.js';

/** What a parameter takes, by the word after its colon. */
export type ParameterKind =
  | { readonly kind: 'quantity'; readonly rule: QuantityRule }
  | { readonly kind: 'part' }
  | { readonly kind: 'thing'; readonly kinds: readonly Kind[] };

export const parameterKinds: Readonly<Record<string, ParameterKind>> = {
  length: { kind: 'quantity', rule: { dimensions: ['length'], range: false } },
  weight: { kind: 'quantity', rule: { dimensions: ['force', 'mass'], range: true } },
  angle: { kind: 'quantity', rule: { dimensions: ['angle'], range: false } },
  ratio: { kind: 'quantity', rule: { dimensions: ['ratio'], range: false } },
  count: { kind: 'quantity', rule: { dimensions: ['count'], range: false, atLeast: 0 } },
  part: { kind: 'part' },
  vehicle: { kind: 'thing', kinds: ['vehicle'] },
  timber: { kind: 'thing', kinds: ['timber'] },
  'strut type': { kind: 'thing', kinds: ['strut type'] },
  'strap type': { kind: 'thing', kinds: ['strap type'] },
};

interface Read {
  readonly values: readonly Argument[];
  readonly next: number;
  readonly problems: readonly LanguageProblem[];
  readonly pieces: readonly MatchedSpan[];
  readonly references: readonly Reference[];
}

/** `(rail = trailer rail, reach = 24 in)` */
export function matchArguments(
  terms: readonly Term[],
  at: number,
  scope: NameScope,
  values: Readonly<Record<string, unknown>>,
  text: string,
): Read | undefined {
  if (terms[at]?.text !== '(') return undefined;
  const given: Argument[] = [];
  const problems: LanguageProblem[] = [];
  const pieces: MatchedSpan[] = [];
  const references: Reference[] = [];
  const pattern = isReference(values.pattern) ? values.pattern.target : undefined;
  const parameters = pattern?.block?.parameters ?? [];
  let i = at + 1;
  while (terms[i] && terms[i]?.text !== ')') {
    const nameTerm = terms[i];
    const equals = terms[i + 1];
    if (nameTerm?.kind !== 'word' || equals?.text !== '=') return undefined;
    const parameter = parameters.find((p) => p.name === nameTerm.text);
    const name: Reference = {
      uri: scope.uri,
      span: nameTerm,
      text: nameTerm.text,
      kinds: ['parameter'],
      target: parameter?.declaration,
    };
    references.push(name);
    pieces.push(
      { span: nameTerm, kind: 'reference', slot: 'parameter', reference: name },
      { span: equals, kind: 'operator', slot: undefined },
    );
    if (pattern && !parameter) {
      problems.push(
        problem('argument-unknown', nameTerm, {
          pattern: nameHole(pattern.name),
          text: nameHole(nameTerm.text),
          names: list(
            parameters.map((p) => nameHole(p.name)),
            'and',
          ),
        }),
      );
    }
    if (given.some((g) => g.name.text === nameTerm.text))
      problems.push(problem('argument-twice', nameTerm, { text: nameHole(nameTerm.text) }));
    const kind = parameterKinds[parameter?.typeWord ?? ''] ?? { kind: 'part' };
    const read = value(terms, i + 2, kind, scope, text);
    append(problems, read.problems);
    if (read.value.kind === 'unreadable') {
      const from = terms[i + 2];
      const span =
        from && read.next > i + 2
          ? { start: from.start, end: terms[read.next - 1]?.end ?? from.end }
          : nameTerm;
      const example = nameHole(argumentExample(parameter?.typeWord ?? ''));
      if (parameter || !pattern)
        problems.push(
          problem('argument-wrong', span, { text: nameHole(nameTerm.text), due: dueWord(kind), example }),
        );
    }
    append(pieces, read.pieces);
    append(references, read.references);
    const end = terms[read.next - 1] ?? equals;
    given.push({ name, value: read.value, span: { start: nameTerm.start, end: end.end } });
    i = read.next;
    if (terms[i]?.text === ',') i++;
    else if (terms[i]?.text !== ')') return undefined;
  }
  const close = terms[i];
  if (!close) return undefined;
  const missing = parameters.filter((p) => !given.some((g) => g.name.text === p.name));
  if (pattern && missing.length > 0) {
    const names = list(
      missing.map((p) => nameHole(p.name)),
      'and',
    );
    const added = missing.map((p) => `${p.name} = ${argumentExample(p.typeWord)}`).join(', ');
    const before = { start: close.start, end: close.start };
    const text = given.length > 0 ? `, ${added}` : added;
    problems.push(
      problem(
        'argument-missing',
        { start: terms[at]?.start ?? 0, end: close.end },
        { pattern: nameHole(pattern.name), names },
        {
          fixes: [replace(problemMessage('argument-missing--fix', { names: nameHole(added) }), before, text)],
        },
      ),
    );
  }
  return { values: given, next: i + 1, problems, pieces, references };
}

function value(terms: readonly Term[], at: number, kind: ParameterKind, scope: NameScope, text: string) {
  const pieces: MatchedSpan[] = [];
  const references: Reference[] = [];
  const problems: LanguageProblem[] = [];
  const refer = (term: Term, kinds: readonly Kind[], target: Reference['target']): Reference => {
    const reference: Reference = { uri: scope.uri, span: term, text: term.text, kinds, target };
    references.push(reference);
    pieces.push({ span: term, kind: 'reference', slot: 'argument', reference });
    return reference;
  };
  const done = (next: number, read: ArgumentValue) => ({ next, value: read, pieces, references, problems });
  if (kind.kind === 'quantity') {
    const read = parseExpression(at, {
      terms,
      text,
      scope,
      rule: kind.rule,
      reserved: new Set(),
      free: true,
    });
    if (!read) return done(skip(terms, at), { kind: 'unreadable' });
    const wrong = checkQuantity(read.expression, kind.rule, scope, (e) =>
      text.slice(e.span.start, e.span.end),
    );
    problems.push(...read.problems, ...wrong);
    append(pieces, read.pieces);
    append(references, read.references);
    return done(read.next, { kind: 'quantity', expression: read.expression });
  }
  const first = terms[at];
  if (first?.kind !== 'word') return done(skip(terms, at), { kind: 'unreadable' });
  if (kind.kind === 'thing') {
    const reference = refer(first, kind.kinds, scope.find(first.text, [...kind.kinds, 'parameter']));
    if (!reference.target) problems.push(unknownName(reference, scope, undefined));
    return done(at + 1, { kind: 'reference', reference, part: undefined });
  }
  const second = terms[at + 1];
  const vehicle = scope.find(first.text, ['vehicle']);
  if (vehicle && second?.kind === 'word') {
    const of = refer(first, ['vehicle'], vehicle);
    const part = refer(second, ['part'], scope.part(vehicle, second.text));
    if (!part.target) problems.push(unknownName(part, scope, vehicle));
    return done(at + 2, { kind: 'reference', reference: of, part });
  }
  const part = refer(
    first,
    ['part'],
    scope.part(undefined, first.text) ?? scope.find(first.text, ['parameter']),
  );
  if (!part.target) problems.push(unknownName(part, scope, undefined));
  return done(at + 1, { kind: 'reference', reference: part, part: undefined });
}

const dueWord = (kind: ParameterKind): Message | List =>
  kind.kind === 'quantity'
    ? dueOf(kind.rule.dimensions)
    : kind.kind === 'part'
      ? termOf('expected.part-of-a-vehicle')
      : aKind(kind.kinds);

const skip = (terms: readonly Term[], at: number): number => {
  let i = at;
  while (terms[i] && terms[i]?.text !== ',' && terms[i]?.text !== ')') i++;
  return i;
};

const isReference = (v: unknown): v is Reference =>
  typeof v === 'object' && v !== null && 'kinds' in v && 'target' in v;

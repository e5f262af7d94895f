import { term as fixed, type List, list, type Message, message, type Name, name } from '@cribwright/messages';
import type { Term } from '@cribwright/syntax/internal';
import { closest, findUnit } from '@cribwright/units';
import { nameLabels, textLabels } from '../bound/label-words.js';
import type { Shape } from '../bound/shape.js';
import { dueOf, exampleOf } from '../phrase/dimension-words.js';
import { aKind } from '../phrase/kind-words.js';
import type { Expected } from '../phrase/match.js';
import type { Stop } from '../phrase/matcher.js';
import { type Renamed, renamedAt } from '../phrase/renamed-words.js';
import type { NameScope } from '../phrase/scope.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import type { DraftLine } from './draft.js';
import { knownSlip } from './slip-problem.js';

/** What to say of a line that could be read only up to a place. */
export function stopProblem(
  line: DraftLine,
  stop: Stop,
  scope: NameScope,
  text: string,
): LanguageProblem | undefined {
  const term = line.terms[stop.at];
  // A strange character has its own message.
  if (term?.kind === 'other') return undefined;
  const example = line.schema.example;
  const choices = choicesAt(stop, scope);
  // An earlier key may begin with a key of today: `units respond`, `units`.
  const renamed = renamedAt(line.terms, 0, 'line', (now) => now !== line.schema.key);
  if (renamed && stop.at === line.from && renamed.text.startsWith(`${line.schema.key} `))
    return renamedWord(renamed);
  if (!term) {
    if (stop.at <= line.from)
      return problem('line-empty', line.keySpan, { key: name(line.schema.key), example: name(example) });
    return problem('line-unfinished', line.span, { choices, example: name(example) });
  }
  const slip = knownSlip({ line, stop, scope, text });
  const words = stop.expected.flatMap((e) => (e.kind === 'word' ? [e.word] : []));
  const near = term.kind === 'word' ? nearWord(line.terms, stop.at, words) : undefined;
  if (slip && !near && !isRange(line, stop.at)) return slip;
  const span = { start: term.start, end: term.end };
  const rest = { start: term.start, end: line.span.end };
  if (isRange(line, stop.at)) {
    const { whole, ends } = rangeAt(line, stop.at, text);
    return problem(
      'range-unexpected--example',
      { start: term.start, end: whole.end },
      {
        example: list(
          ends.map((end) => name(end)),
          'or',
        ),
      },
      {
        fixes: ends.map((near) =>
          replace(problemMessage('range-unexpected--fix', { near: name(near) }), whole, near),
        ),
      },
    );
  }
  if (near) {
    return problem(
      'word-unexpected--near',
      near.span,
      { text: name(near.text), near: name(near.word) },
      {
        fixes: [
          replace(problemMessage('word-unexpected--fix', { near: name(near.word) }), near.span, near.word),
        ],
      },
    );
  }
  if (stop.at === line.from && (term.text === '=' || term.text === ':')) {
    const drop = { start: previousEnd(line, stop.at), end: term.end };
    return problem(
      'word-unexpected--sign',
      span,
      { text: name(term.text), example: name(example) },
      { fixes: [replace(problemMessage('word-unexpected--drop', { text: name(term.text) }), drop, '')] },
    );
  }
  const and = line.terms.slice(line.from, stop.at + 1).find((t) => t.kind === 'word' && t.text === 'and');
  if (and && isList(line.schema.phrase)) {
    const gap = { start: line.terms[line.terms.indexOf(and) - 1]?.end ?? and.start, end: and.end };
    return problem(
      'word-unexpected--and',
      { start: and.start, end: and.end },
      { text: name(and.text), example: name(example) },
      { fixes: [replace(problemMessage('word-unexpected--comma', {}), gap, ',')] },
    );
  }
  if (term.kind === 'size' && words.length === 0 && stop.expected.some((e) => e.kind === 'quantity')) {
    const near = term.text.replace('x', ' by ');
    return problem(
      'word-unexpected--near',
      span,
      { text: name(term.text), near: name(near) },
      { fixes: [replace(problemMessage('word-unexpected--fix', { near: name(near) }), span, near)] },
    );
  }
  if (/^[x×X]$/.test(term.text) && words.includes('by')) {
    return problem(
      'word-unexpected--near',
      span,
      { text: name(term.text), near: name('by') },
      { fixes: [replace(problemMessage('word-unexpected--fix', { near: name('by') }), span, 'by')] },
    );
  }
  const complete = stop.expected.some((e) => e.kind === 'end');
  if (complete && words.length > 0 && term.kind === 'word')
    return problem('word-unexpected--choices', span, {
      text: name(term.text),
      choices,
      example: name(example),
    });
  if (complete) {
    const written = text.slice(rest.start, rest.end);
    return problem(
      'word-unexpected--end',
      span,
      { text: name(term.text), example: name(example) },
      {
        fixes: droppable(line.terms.slice(stop.at))
          ? [
              replace(
                problemMessage('word-unexpected--drop', { text: name(term.text === ',' ? ',' : written) }),
                { start: previousEnd(line, stop.at), end: term.text === ',' ? span.end : rest.end },
                '',
              ),
            ]
          : [],
      },
    );
  }
  return choices.items.length === 0
    ? problem('word-unexpected', span, { text: name(term.text) })
    : problem('word-unexpected--choices', span, { text: name(term.text), choices, example: name(example) });
}

/** A name was taken for another kind because an earlier word follows it: `S1 base`, where `S1 base` is meant. */
export function renamedAfter(line: DraftLine, { code, span }: LanguageProblem): LanguageProblem | undefined {
  if (code !== 'wrong-kind') return undefined;
  const next = line.terms.findIndex((t) => t.start >= span.end);
  const renamed = renamedAt(line.terms, next, 'words', () => true);
  return next < 0 || !renamed ? undefined : renamedWord(renamed);
}

const renamedWord = ({ text, now, span }: Renamed): LanguageProblem =>
  problem(
    'word-unexpected--near',
    span,
    { text: name(text), near: name(now) },
    { fixes: [replace(problemMessage('word-unexpected--fix', { near: name(now) }), span, now)] },
  );

/** Nothing that says how much or how far is ever offered to be taken out; of a comma, the comma alone. */
const droppable = (rest: readonly Term[]): boolean =>
  rest[0]?.text === ',' || rest.every((t) => t.kind !== 'number' && t.kind !== 'size');

/** Whether a phrase has a list in it: things with commas between. */
const isList = (p: Shape): boolean =>
  p.kind === 'list' || ('items' in p && p.items.some(isList)) || ('item' in p && isList(p.item));

const previousEnd = (line: DraftLine, at: number) => line.terms[at - 1]?.end ?? line.keySpan.end;

/** `to 5 ft` or `± 8 %` after a quantity where one value is due. */
const isRange = (line: DraftLine, at: number): boolean => {
  const [before, term, after] = [line.terms[at - 1], line.terms[at], line.terms[at + 1]];
  if (!before || !after || after.kind !== 'number') return false;
  const measured = line.terms.slice(line.from, at).some((t) => t.kind === 'number');
  return measured && (term?.text === 'to' || term?.text === '±');
};

/** The range around `to` or `±`, and the single values that it could be, each with its unit. Which, its author knows. */
function rangeAt(line: DraftLine, at: number, text: string) {
  const { terms } = line;
  const start = numberStart(line, at);
  let last = at + 1;
  const isUnit = (t: Term | undefined) =>
    t !== undefined && (findUnit(t.text) !== undefined || t.text === '%');
  while (isUnit(terms[last + 1]) || (terms[last + 1]?.kind === 'number' && isUnit(terms[last]))) last++;
  const whole = { start, end: terms[last]?.end ?? line.span.end };
  const low = text.slice(start, terms[at]?.start).trim();
  const second = terms[at + 1];
  const unit = second ? text.slice(second.end, whole.end).trim() : '';
  const measured = isUnit(terms[at - 1]);
  const kept = measured || terms[at]?.text === '±' || unit === '' ? low : `${low} ${unit}`;
  const ends = terms[at]?.text === '±' ? [kept] : [kept, text.slice(second?.start, whole.end).trim()];
  return { whole, ends };
}

const numberStart = (line: DraftLine, at: number): number => {
  let i = at - 1;
  while (i > line.from && line.terms[i]?.kind !== 'number') i--;
  return line.terms[i]?.start ?? line.span.start;
};

/** The word, or words in a row, that was most likely meant. */
function nearWord(terms: readonly Term[], at: number, words: readonly string[]) {
  const renamed = renamedAt(terms, at, 'words', (now) => words.includes(now));
  if (renamed) return { word: renamed.now, text: renamed.text, span: renamed.span };
  for (const length of [2, 1, 3]) {
    const run = terms.slice(at, at + length);
    const [first, last] = [run[0], run.at(-1)];
    if (run.length < length || !first || !last || run.some((t) => t.kind !== 'word')) continue;
    const text = run.map((t) => t.text).join(' ');
    const word = closest(
      text,
      words.filter((w) => w.split(' ').length === length),
    );
    if (word !== undefined) return { word, text, span: { start: first.start, end: last.end } };
  }
  return undefined;
}

/** As many choices as help. */
const mostChoices = 6;

function choicesAt({ expected }: Stop, scope: NameScope): List {
  const words = expected.filter((e) => e.kind !== 'end').map((e) => inWords(e, scope));
  const distinct = new Map(words.map((w) => [JSON.stringify(w), w]));
  return list([...distinct.values()].slice(0, mostChoices), 'plain');
}

/** What may stand at a place, in words. */
export function inWords(e: Expected, scope: Pick<NameScope, 'names'>): Message | Name {
  switch (e.kind) {
    case 'word':
      return name(e.word);
    case 'symbol':
      return e.symbol === ',' ? fixed('expected.comma') : name(e.symbol);
    case 'quantity':
      return e.dimensions.length === 0
        ? fixed('expected.calculation')
        : message('expected.such-as', {
            due: dueOf(e.dimensions),
            example: name(exampleOf(e.dimensions)),
          });
    case 'unit':
      return fixed('expected.unit');
    case 'reference': {
      const some = scope
        .names(e.kinds)
        .slice(0, 3)
        .map((d) => name(d.name));
      const kind = aKind(e.kinds);
      return some.length > 0 ? message('expected.one-of', { kind, names: list(some, 'plain') }) : kind;
    }
    case 'part':
      return fixed('expected.part');
    case 'name':
      return message('expected.name-for', { what: fixed(nameLabels[e.label]) });
    case 'text':
      return message('expected.in-quotes', { what: fixed(textLabels[e.label]) });
    case 'date':
      return fixed('expected.date');
    case 'size':
      return fixed('expected.size');
    case 'rule':
      return fixed('expected.rule');
    case 'figure':
      return fixed('expected.figure');
    case 'end':
      return fixed('expected.end');
  }
}

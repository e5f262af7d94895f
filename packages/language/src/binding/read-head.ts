import { list, name as nameHole } from '@cribwright/messages';
import { append, type Span, type Term } from '@cribwright/syntax/internal';
import { closest, findUnit } from '@cribwright/units';
import type { BlockSchema } from '../bound/block-schema.js';
import { kindWords } from '../phrase/kind-words.js';
import { unquoted } from '../phrase/unquoted.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { parameterTypes } from '../schema/pattern-block.js';
import { subjectOf } from './place-words.js';

export interface Head {
  readonly name: Term | undefined;
  readonly title: { readonly text: string; readonly span: Span } | undefined;
  readonly type: readonly Term[];
  readonly parameters: readonly {
    readonly name: Term;
    readonly type: string;
    readonly typeSpan: Span | undefined;
  }[];
  readonly problems: readonly LanguageProblem[];
}

/** Reads what stands between a block's keyword and its brace: name, type, title, parameters. */
export function readHead(schema: BlockSchema, terms: readonly Term[], keyword: Span): Head {
  const problems: LanguageProblem[] = [];
  const keyed = { keyword: nameHole(schema.keyword) };
  const example = schema.example.split('\n')[0]?.replace(/ \{.*$/, '') ?? schema.keyword;
  let name: Term | undefined;
  let title: Head['title'];
  let type: Term[] = [];
  let parameters: Head['parameters'] = [];
  let i = 0;
  while (i < terms.length) {
    const term = terms[i];
    if (!term) break;
    if (
      !name &&
      schema.head.name !== 'none' &&
      (term.kind === 'word' || (term.kind === 'number' && schema.declares === 'axle'))
    ) {
      name = term;
      i++;
    } else if (!title && schema.head.title && term.kind === 'text') {
      const inner = unquoted(term.text);
      title = { text: inner, span: { start: term.start + 1, end: term.start + 1 + inner.length } };
      i++;
    } else if (term.text === ':' && type.length === 0 && schema.head.type) {
      const next = terms[i + 1];
      const split = splitType(terms, i + 1);
      if (split) {
        problems.push(split.problem);
        i += 1 + split.length;
        continue;
      }
      type = next?.kind === 'word' ? [next] : [];
      i += 1 + type.length;
      if (type.length === 0) problems.push(typeMissing(schema, name ?? term, example));
    } else if (term.text === ':' && !schema.head.type) {
      problems.push(
        problem('type-unexpected', { start: term.start, end: terms.at(-1)?.end ?? term.end }, keyed),
      );
      i = terms.length;
    } else if (term.text === '(' && schema.head.parameters) {
      const read = readParameters(terms, i + 1);
      parameters = read.parameters;
      append(problems, read.problems);
      i = read.next;
    } else {
      const whole = wholeWord(terms, i);
      // A strange character has its own message; after the first slip the rest of the head is only noise.
      const slip = problems.length === 0 ? headSlip(schema, name, terms, i) : undefined;
      if (slip) {
        problems.push(slip.problem);
        i += slip.length;
        continue;
      }
      if (term.kind !== 'other' && problems.length === 0 && terms[i - 1]?.kind !== 'other') {
        problems.push(
          !name && schema.head.name !== 'none'
            ? nameMalformed(whole)
            : problem('head-unexpected', whole, { text: nameHole(whole.text), example: nameHole(example) }),
        );
      }
      i += whole.length - 1;
      i++;
    }
  }
  const quoted = terms.some((t) => /^[“”„«»]$/.test(t.text));
  const nameFailed = problems.some((p) => p.code === 'name-malformed');
  const strange = terms.some((t) => t.kind === 'other');
  if (schema.head.name === 'required' && !name && !nameFailed && !strange) {
    problems.push(problem('name-missing', keyword, { ...keyed, example: nameHole(example) }));
  }
  // Quotes of a word processor are told as such.
  if (schema.head.title === 'required' && !title && !quoted) {
    const rest = terms.filter((t) => t.kind !== 'other');
    const [first, last] = [rest[0], rest.at(-1)];
    const single = first?.text === "'" && last?.text === "'" && first !== last;
    const fixes =
      first && last
        ? [
            {
              title: problemMessage('title-missing--fix', {}),
              edits: [
                { span: { start: first.start, end: single ? first.end : first.start }, text: '"' },
                { span: { start: single ? last.start : last.end, end: last.end }, text: '"' },
              ],
              safe: false,
            },
          ]
        : [];
    // What stands in the place of the title is meant as one: that is all there is to say of it.
    const others = problems.filter((p) => !/^(?:head-unexpected|name-malformed|name-spaces)$/.test(p.code));
    problems.splice(0, problems.length, ...others);
    const at = first && last ? { start: first.start, end: last.end } : keyword;
    problems.push(problem('title-missing', at, { ...keyed, example: nameHole(example) }, { fixes }));
  }
  if (name && findUnit(name.text) && /^[a-z]/.test(name.text)) {
    problems.push(problem('name-is-unit', name, { text: nameHole(name.text) }));
  }
  const typeAsked = problems.some((p) => p.code === 'type-missing' || p.code === 'type-spaces');
  if (schema.head.type?.required && type.length === 0 && !typeAsked) {
    const next = name && terms[terms.indexOf(name) + 1];
    const colon = next?.kind === 'word' ? next : undefined;
    // The word after the name is meant as its type: that is all there is to say of it.
    if (colon) problems.splice(0, problems.length, ...problems.filter((p) => p.span.start !== colon.start));
    problems.push(typeMissing(schema, name ?? keyword, example, colon));
  }
  return { name, title, type, parameters, problems };
}

/** `crib A rear`, `crib A-1`: a name of several words; `vehicle trailer VanTrailer53`: a type without its colon. */
function headSlip(
  schema: BlockSchema,
  own: Term | undefined,
  terms: readonly Term[],
  at: number,
): { readonly problem: LanguageProblem; readonly length: number } | undefined {
  const [term, next] = [terms[at], terms[at + 1]];
  if (!own || !term || terms[at - 1] !== own) return undefined;
  const colon = terms.some((t) => t.text === ':');
  if (term.kind === 'word' && schema.head.type && !colon && /^[A-Z]/.test(term.text)) {
    const near = `${own.text} : ${term.text}`;
    const fix = replace(
      problemMessage('type-missing--fix', { near: nameHole(term.text) }),
      { start: term.start, end: term.start },
      ': ',
    );
    const { start, end } = term;
    return {
      problem: problem('type-missing--colon', { start, end }, { near: nameHole(near) }, { fixes: [fix] }),
      length: 1,
    };
  }
  const dashed = term.text === '-' && next?.start === term.end && term.start === own.end;
  const last = dashed ? next : term.kind === 'word' ? term : undefined;
  if (!last || (schema.head.title === 'required' && !colon)) return undefined;
  const near = `${own.text}_${last.text}`;
  const span = { start: own.start, end: last.end };
  return {
    problem: problem(
      'name-spaces',
      span,
      {
        text: nameHole(dashed ? `${own.text}-${last.text}` : `${own.text} ${last.text}`),
        near: nameHole(near),
      },
      { fixes: [replace(problemMessage('name-malformed--fix', { near: nameHole(near) }), span, near)] },
    ),
    length: dashed ? 2 : 1,
  };
}

/** `: Van Trailer 53`: the name of a type with spaces in it. */
function splitType(terms: readonly Term[], from: number) {
  const run: Term[] = [];
  for (let i = from; terms[i]?.kind === 'word' || terms[i]?.kind === 'number'; i++)
    run.push(terms[i] as Term);
  const [first, last] = [run[0], run.at(-1)];
  if (run.length < 2 || !first || !last) return undefined;
  const near = run.map((t) => t.text).join('');
  const span = { start: first.start, end: last.end };
  return {
    problem: problem(
      'type-spaces',
      span,
      { text: nameHole(run.map((t) => t.text).join(' ')), near: nameHole(near) },
      { fixes: [replace(problemMessage('name-malformed--fix', { near: nameHole(near) }), span, near)] },
    ),
    length: run.length,
  };
}

/** `crib "A"`: a name without its quotes is right. */
function nameMalformed(whole: Span & { readonly text: string }): LanguageProblem {
  const near = unquoted(whole.text);
  const fixes = /^[A-Za-z]\w*$/.test(near)
    ? [replace(problemMessage('name-malformed--fix', { near: nameHole(near) }), whole, near)]
    : [];
  return problem('name-malformed', whole, { text: nameHole(whole.text) }, { fixes });
}

/** `1A` is read as two terms that touch. */
function wholeWord(
  terms: readonly Term[],
  at: number,
): Span & { readonly text: string; readonly length: number } {
  const [a, b] = [terms[at], terms[at + 1]];
  if (!a) return { start: 0, end: 0, text: '', length: 1 };
  const joined = a.kind === 'number' && b?.kind === 'word' && a.end === b.start;
  return joined ? { start: a.start, end: b.end, text: a.text + b.text, length: 2 } : { ...a, length: 1 };
}

const typeMissing = (schema: BlockSchema, at: Span & { text?: string }, example: string, colon?: Term) =>
  problem(
    'type-missing',
    at,
    {
      subject: subjectOf({ schema, name: at.text === ':' || at.text === '' ? undefined : at.text }),
      kind: kindWords(schema.head.type?.kinds ?? []),
      example: nameHole(example),
    },
    {
      fixes: colon
        ? [
            replace(
              problemMessage('type-missing--fix', { near: nameHole(colon.text) }),
              { start: colon.start, end: colon.start },
              ': ',
            ),
          ]
        : [],
    },
  );

function readParameters(terms: readonly Term[], from: number) {
  const parameters: { name: Term; type: string; typeSpan: Span | undefined }[] = [];
  const problems: LanguageProblem[] = [];
  let i = from;
  while (i < terms.length && terms[i]?.text !== ')') {
    const name = terms[i];
    if (name?.kind !== 'word') {
      if (name && name.text !== ',')
        problems.push(problem('name-malformed', name, { text: nameHole(name.text) }));
      i++;
      continue;
    }
    i++;
    const words: Term[] = [];
    if (terms[i]?.text === ':') {
      i++;
      while (terms[i]?.kind === 'word') {
        const word = terms[i];
        if (word) words.push(word);
        i++;
      }
    }
    const type = words.map((w) => w.text).join(' ') || 'part';
    const [first, last] = [words[0], words.at(-1)];
    const typeSpan = first && last ? { start: first.start, end: last.end } : undefined;
    if (!parameterTypes.some((t) => t === type)) {
      const span = typeSpan ?? name;
      const near = closest(type, parameterTypes);
      problems.push(
        problem(
          'parameter-type',
          span,
          {
            text: nameHole(type),
            choices: list(
              parameterTypes.map((t) => nameHole(t)),
              'plain',
            ),
          },
          {
            fixes:
              near === undefined
                ? []
                : [replace(problemMessage('word-unexpected--fix', { near: nameHole(near) }), span, near)],
          },
        ),
      );
    }
    parameters.push({ name, type, typeSpan });
  }
  return { parameters, problems, next: i + 1 };
}

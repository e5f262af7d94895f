import type { BoundBlock, BoundProperty, TextChange } from '@cribwright/language';
import type { Span } from '@cribwright/syntax/internal';

/** What may follow the work of a step, in any order. */
export const clauses: readonly string[] = ['crew', 'takes', 'with', 'after', 'note'];

type Where = 'before' | 'behind';

/** Where the value of a clause stands: of `after 2, 3` the `2, 3`. `undefined` where the step has none. */
export function clauseAt(step: BoundProperty, clause: string): Span | undefined {
  const at = step.terms.findIndex((t, i) => i > 0 && t.kind === 'word' && t.text === clause);
  if (at < 0) return undefined;
  const next = step.terms.findIndex((t, i) => i > at && t.kind === 'word' && clauses.includes(t.text));
  const start = step.terms[at + 1]?.start ?? step.span.end;
  const last = step.terms[(next < 0 ? step.terms.length : next) - 1];
  return { start, end: Math.max(start, last?.end ?? start) };
}

/** `build A  crew 2` becomes `build A, B  crew 2`. */
export function appendTarget(step: BoundProperty, text: string): TextChange {
  const clause = step.terms.findIndex((t, i) => i > 0 && t.kind === 'word' && clauses.includes(t.text));
  const last = step.terms[(clause < 0 ? step.terms.length : clause) - 1];
  const end = last?.end ?? step.span.end;
  return { span: { start: end, end }, text: `, ${text}` };
}

/** The lines of the steps in one block, as they stand. */
const linesOf = ({ properties, schema }: BoundBlock): readonly BoundProperty[] =>
  properties.filter((p) => p.schema === schema.numbered);

const numberOf = (step: BoundProperty): number => Number(step.key.replaceAll(',', ''));

/** New lines beside a step, and numbers for those after them as far as there is no gap for their own. */
export function insertSteps(
  text: string,
  block: BoundBlock,
  beside: BoundProperty,
  where: Where,
  works: readonly string[],
): readonly TextChange[] {
  const lines = linesOf(block);
  const place = lines.indexOf(beside) + (where === 'behind' ? 1 : 0);
  const previous = lines[place - 1];
  const first = (previous === undefined ? 0 : numberOf(previous)) + 1;
  const renamed = new Map<number, number>();
  let taken = first + works.length - 1;
  for (const line of lines.slice(place)) {
    if (numberOf(line) > taken) break;
    taken++;
    renamed.set(numberOf(line), taken);
  }
  const numbers = lines.flatMap((line) => {
    const now = renamed.get(numberOf(line));
    return now === undefined ? [] : [{ span: line.keySpan, text: `${now}` }];
  });
  const waits = lines.flatMap((line) => afterChanges(line, renamed));
  const gap = text.slice(beside.keySpan.end, beside.terms.find((t) => t.start >= beside.keySpan.end)?.start);
  const between = /^[ \t]+$/.test(gap) ? gap : '  ';
  const written = works.map((work, i) => `${first + i}${between}${work}`);
  return [newLines(text, beside, where, written), ...numbers, ...waits];
}

function newLines(text: string, beside: BoundProperty, where: Where, written: readonly string[]): TextChange {
  const { start, end } = beside.span;
  const margin = /(?:^|[\r\n])([ \t]*)$/.exec(text.slice(0, start))?.[1];
  // Several on one line: more among them.
  if (margin === undefined || /^[ \t]*;/.test(text.slice(end)))
    return where === 'before'
      ? { span: { start, end: start }, text: written.map((line) => `${line}; `).join('') }
      : { span: { start: end, end }, text: written.map((line) => `; ${line}`).join('') };
  const eol = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
  if (where === 'before') {
    const at = start - margin.length;
    return { span: { start: at, end: at }, text: written.map((line) => margin + line + eol).join('') };
  }
  const last = contentOf(text, beside).end;
  return { span: { start: last, end: last }, text: written.map((line) => eol + margin + line).join('') };
}

/** What a step says behind its number, with the comment that ends its line. */
function contentOf(text: string, step: BoundProperty): Span {
  const rest = /^[ \t]*\/\/[^\r\n]*/.exec(text.slice(step.span.end))?.[0] ?? '';
  return { start: step.keySpan.end, end: step.span.end + rest.trimEnd().length };
}

/** The numbers stay where they are, and what the steps say moves under them. */
export function moveStep(
  text: string,
  block: BoundBlock,
  step: BoundProperty,
  where: Where,
  other: BoundProperty,
): readonly TextChange[] {
  const lines = linesOf(block);
  const rest = lines.filter((line) => line !== step);
  const place = rest.indexOf(other) + (where === 'behind' ? 1 : 0);
  const order = [...rest.slice(0, place), step, ...rest.slice(place)];
  const renamed = new Map(
    order.flatMap((line, i) => {
      const now = lines[i];
      return now === undefined || now === line ? [] : [[numberOf(line), numberOf(now)] as const];
    }),
  );
  return lines.flatMap((line, i) => {
    const says = order[i];
    if (says === undefined || says === line) return afterChanges(line, renamed);
    const content = contentOf(text, says);
    return [{ span: contentOf(text, line), text: rewritten(text, content, afterChanges(says, renamed)) }];
  });
}

/** Numbers in `after 2, 3` that name a step which has another number now. */
function afterChanges(step: BoundProperty, renamed: ReadonlyMap<number, number>): readonly TextChange[] {
  const at = clauseAt(step, 'after');
  if (at === undefined) return [];
  return step.terms.flatMap((t) => {
    const now = t.start >= at.start && t.end <= at.end ? renamed.get(Number(t.text)) : undefined;
    return now === undefined ? [] : [{ span: { start: t.start, end: t.end }, text: `${now}` }];
  });
}

/** A stretch of the text with changes inside of it. */
const rewritten = (text: string, { start, end }: Span, changes: readonly TextChange[]): string =>
  [...changes]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce(
      (now, { span, text: put }) => now.slice(0, span.start - start) + put + now.slice(span.end - start),
      text.slice(start, end),
    );

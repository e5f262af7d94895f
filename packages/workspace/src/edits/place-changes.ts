import type { BoundProperty, TextChange } from '@cribwright/language';
import type { Expression, MatchedSpan, WrittenQuantity } from '@cribwright/language/internal';
import { withUnitWords } from '@cribwright/language/internal';
import type { Message } from '@cribwright/messages';
import { message, name } from '@cribwright/messages';
import type { Span } from '@cribwright/syntax/internal';
import { readQuantity } from '@cribwright/units';
import { writeLength } from './write-length.js';

export type Moved = { readonly changes: readonly TextChange[] } | { readonly refused: Message };

/** Less than this off the middle is the middle. */
const middle = 0.0127;

/** Changes that put `24 ft, driver side 2 ft` elsewhere: each length only where it changes. */
export function placeChanges(
  text: string,
  line: BoundProperty,
  to: { readonly x?: number; readonly y?: number },
  from?: Along,
): Moved {
  const values = line.match?.values;
  const back = values?.back as WrittenQuantity | undefined;
  if (!line.match || !values)
    return { refused: message('edit.unreadable', { element: name(line.block?.name ?? line.key) }) };
  if (!back) {
    const place = text.slice(line.keySpan.end, line.span.end).trim();
    return { refused: message('edit.by-part', { place: name(place) }) };
  }
  const changes: TextChange[] = [];
  if (to.x !== undefined) {
    const measured = values.way !== undefined || values.fromEnd !== undefined;
    const far = measured ? farFrom(text, back, to.x, from) : to.x;
    if (far === undefined || far < 0)
      return { refused: message('edit.cannot-move', { element: name(line.block?.name ?? line.key) }) };
    const change = lengthChange(text, back, far);
    if ('refused' in change) return change;
    changes.push(...change.changes);
  }
  if (to.y !== undefined) {
    const change = acrossChange(text, line.match.pieces, values, back, to.y);
    if ('refused' in change) return change;
    changes.push(...change.changes);
  }
  return { changes };
}

/** Where something is that is measured from something else than the front, and which way its distance grows. */
export interface Along {
  /** Along the plan, m, as the text has it now. */
  readonly x: number;
  /** 1 where a longer distance is farther back, -1 where it is farther ahead. */
  readonly grows: 1 | -1;
}

/** The distance to write so that it comes to a place; `undefined` where that is not known. */
function farFrom(
  text: string,
  { span }: WrittenQuantity,
  x: number,
  from: Along | undefined,
): number | undefined {
  const read = readQuantity(withUnitWords(text.slice(span.start, span.end)));
  return from === undefined || !read.ok ? undefined : read.value.value + from.grows * (x - from.x);
}

export function lengthChange(text: string, { expression, span }: WrittenQuantity, meters: number): Moved {
  const was = text.slice(span.start, span.end);
  const put = writeLength(meters, unwrapped(expression));
  if (put !== undefined) return { changes: put === was ? [] : [{ span, text: put }] };
  const range = expression.kind === 'range' || expression.kind === 'tolerance';
  return { refused: message(range ? 'edit.range' : 'edit.calculated', { value: name(was) }) };
}

const unwrapped = (e: Expression): Expression => (e.kind === 'group' ? unwrapped(e.of) : e);

function acrossChange(
  text: string,
  pieces: readonly MatchedSpan[],
  values: Readonly<Record<string, unknown>>,
  back: WrittenQuantity,
  y: number,
): Moved {
  const side = values.side as { readonly text: string; readonly span: Span } | undefined;
  const offset = values.offset as WrittenQuantity | undefined;
  const wanted = Math.abs(y) < middle ? 'center' : y < 0 ? 'driver side' : 'passenger side';
  if (side && offset && wanted === side.text) return lengthChange(text, offset, Math.abs(y));
  if (offset && writeLength(0, unwrapped(offset.expression)) === undefined)
    return lengthChange(text, offset, Math.abs(y));
  const like = offset?.expression ?? back.expression;
  const length = wanted === 'center' ? undefined : writeLength(Math.abs(y), unwrapped(like));
  const words = length === undefined ? wanted : `${wanted} ${length}`;
  const center = pieces.find((p) => text.slice(p.span.start, p.span.end) === 'center')?.span;
  const start = side?.span.start ?? center?.start;
  if (start === undefined) {
    if (wanted === 'center') return { changes: [] };
    return { changes: [{ span: { start: back.span.end, end: back.span.end }, text: `, ${words}` }] };
  }
  const end = offset?.span.end ?? side?.span.end ?? center?.end ?? start;
  return { changes: text.slice(start, end) === words ? [] : [{ span: { start, end }, text: words }] };
}

import type { TextChange } from '@cribwright/language';

/** A text with changes made in it. They must not overlap. */
export function applyChanges(text: string, changes: readonly TextChange[]): string {
  let out = '';
  let at = 0;
  for (const { span, text: put } of [...changes].sort((a, b) => a.span.start - b.span.start)) {
    out += text.slice(at, span.start) + put;
    at = span.end;
  }
  return out + text.slice(at);
}

import type { BoundProperty } from '@cribwright/language';

/** A line as its author wrote it, in one row, without comments. */
export function lineText({ terms }: BoundProperty, text: string): string {
  let out = '';
  let end: number | undefined;
  for (const term of terms) {
    // A gap of any width, or a comment, becomes one space.
    if (end !== undefined && /\s/.test(text.slice(end, term.start))) out += ' ';
    out += term.text;
    end = term.end;
  }
  return out;
}

/**
 * What a line means, for comparing: names of renamed things as they are called now, numbers without separators and
 * idle zeros. Two lines with the same text mean the same in the same surroundings.
 *
 * @param nameNow the present name of what an old name stands for
 * @param withKey false leaves out the number that a step begins with
 */
export function lineMeaning(
  { terms, keySpan, match }: BoundProperty,
  nameNow: (name: string) => string,
  withKey = true,
): string {
  const references = new Set(match?.references.map((r) => r.span.start));
  return terms
    .filter((t) => withKey || t.start >= keySpan.end)
    .map((t) => (references.has(t.start) ? nameNow(t.text) : t.kind === 'number' ? plain(t.text) : t.text))
    .join(' ');
}

const plain = (number: string): string => {
  const bare = number.replaceAll(',', '');
  return bare.includes('.') ? bare.replace(/\.?0+$/, '') : bare;
};

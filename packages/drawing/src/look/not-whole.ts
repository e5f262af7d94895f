import { message, name, type Phrase, term, type Words } from '@cribwright/messages';

/** An error in text that the plan reads from. */
export interface UnreadText {
  readonly file: string;
  /** Lines count from 0. */
  readonly range: { readonly start: { readonly line: number } };
  readonly message: Phrase;
}

/** What is known of how a plan was read. */
interface Read {
  /** It was not read whole. */
  readonly partial?: boolean;
  readonly unread?: readonly UnreadText[];
}

/** What a sheet says of a plan that was not read whole, with the first places; `undefined` where it was read whole. */
export function notWholeWords(read: Read, most: number, words: Words): string | undefined {
  const lines = notWholeLines(read, most, words);
  return lines.length === 0 ? undefined : lines.join(' ');
}

/** The same, each place by itself. Empty where the plan was read whole. */
export function notWholeLines({ partial, unread = [] }: Read, most: number, words: Words): readonly string[] {
  if (partial !== true) return [];
  const left = unread.length - most;
  return [
    // What is missing looks like what was never planned.
    term('view.not-whole'),
    ...unread.slice(0, most).map((u) =>
      message('view.not-read', {
        file: name(u.file),
        line: name(String(u.range.start.line + 1)),
        problem: u.message,
      }),
    ),
    ...(left > 0 ? [message('view.and-more', { more: name(String(left)) })] : []),
  ].map(words.message);
}

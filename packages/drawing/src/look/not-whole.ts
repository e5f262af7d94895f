import { type Phrase, wordsIn } from '@cribwright/messages';

/** The mark of a plan that was not read whole: what is missing looks like what was never planned. */
export const notWhole = 'NOT READ WHOLE';

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

const warning = `${notWhole}: part of this plan may be missing. Do not build from it.`;

/** What a sheet says of a plan that was not read whole, with the first places; `undefined` where it was read whole. */
export function notWholeWords(read: Read, most: number): string | undefined {
  const lines = notWholeLines(read, most);
  return lines.length === 0 ? undefined : lines.join(' ');
}

/** The same, each place by itself. Empty where the plan was read whole. */
export function notWholeLines({ partial, unread = [] }: Read, most: number): readonly string[] {
  if (partial !== true) return [];
  const left = unread.length - most;
  return [
    warning,
    ...unread
      .slice(0, most)
      .map(
        (u) =>
          `Not read: ${u.file} line ${u.range.start.line + 1}. ${wordsIn('en', 'us').message(u.message)}`,
      ),
    ...(left > 0 ? [`And ${left} more.`] : []),
  ];
}

import type { Message } from '@cribwright/messages';
import type { TextRange } from './text-range.js';

/** An error in text that a plan reads from. */
export interface Unread extends TextRange {
  /** The name of the file, without its folder. */
  readonly file: string;
  readonly message: Message;
}

import { type Message, term } from '@cribwright/messages';
import type { Strut } from '@cribwright/model';

const words = {
  pinned: 'spoken.lock-pinned',
  collar: 'spoken.lock-collar',
  'pump only': 'spoken.lock-pump-only',
} as const;

/** What keeps a strut from getting shorter: `pinned`, `lock collar`. */
export const lockWords = (lock: NonNullable<Strut['lock']>): Message => term(words[lock]);

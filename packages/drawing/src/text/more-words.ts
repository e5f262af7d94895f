import { message, name } from '@cribwright/messages';
import type { Say } from './say.js';

/** Names of which only the first are written: `A, B and 3 more`. */
export const moreWords = (names: string, more: number, say: Say): string =>
  say.message(message('view.names-and-more', { names: name(names), more: name(String(more)) }));

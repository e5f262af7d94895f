import { message, name } from '@cribwright/messages';
import type { Say } from './say.js';

/** A name as a drawing writes it. Chocks that a step puts in without naming them are called by that step. */
export function drawnName(own: string, say: Say): string {
  const step = /^step (.+)$/.exec(own)?.[1];
  return step === undefined ? own : say.message(message('view.step', { number: name(step) }));
}

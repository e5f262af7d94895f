import { elementMessage } from '@cribwright/engine';
import { type Message, type Name, name } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { shortName } from '../text/short-name.js';

/** An element by kind and name, with a long name shortened as a drawing shortens it. */
export function shortWords(
  { id, name: own }: { readonly id: string; readonly name: string },
  look: Look,
): Message | Name {
  const words = elementMessage(look.plan, id);
  return words.kind === 'message' && 'name' in words.holes
    ? { ...words, holes: { ...words.holes, name: name(shortName(own)) } }
    : words;
}

import type { MessageHoles } from './generated/catalogs.js';
import type { NoHoles } from './values/hole-kinds.js';
import type { Hole, Message } from './values/values.js';

/** The ids of all messages. */
export type MessageId = keyof MessageHoles;

/** The ids of messages that have no holes: terms, labels, fixed sentences. */
export type TermId = {
  [Id in MessageId]: MessageHoles[Id] extends NoHoles
    ? keyof MessageHoles[Id] extends never
      ? Id
      : never
    : never;
}[MessageId];

/** A message with what goes into its holes. A hole that is missing, misspelled or of another kind does not compile. */
export const message = <Id extends MessageId>(id: Id, holes: MessageHoles[Id]): Message => ({
  kind: 'message',
  id,
  holes: holes as unknown as Readonly<Record<string, Hole>>,
});

const terms = new Map<string, Message>();
const nothing = {};

/** A message without holes; the same object each time, so that thousands of figures share it. */
export function term(id: TermId): Message {
  const known = terms.get(id);
  if (known !== undefined) return known;
  const made: Message = { kind: 'message', id, holes: nothing };
  terms.set(id, made);
  return made;
}

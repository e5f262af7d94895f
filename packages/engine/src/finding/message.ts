import type { Hole, Message } from '@cribwright/messages';

export type { Message } from '@cribwright/messages';

/** The names of the `{holes}` in a message's words. */
export type HolesOf<Words extends string> = Words extends `${string}{${infer Name}}${infer Rest}`
  ? Name | HolesOf<Rest>
  : never;

/**
 * Transition: a table of English messages that are not in a catalog yet, holes in braces. A converted rule calls
 * `message` of `@cribwright/messages` instead, and has its words beside it in messages.en.ftl and messages.es.ftl.
 */
export function messages<const Table extends Readonly<Record<string, string>>>(prefix: string, table: Table) {
  return <Key extends keyof Table & string>(
    key: Key,
    holes: Readonly<Record<HolesOf<Table[Key]>, Hole>>,
  ): Message => ({ kind: 'message', id: `${prefix}.${key}`, holes, english: table[key] ?? '' });
}

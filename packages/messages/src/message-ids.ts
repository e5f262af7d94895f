import type { MessageId } from './compose.js';
import { englishTexts } from './generated/texts/english.js';
import { name } from './message.js';
import type { Message } from './values/values.js';

/** The catalog as one text. */
const english = (): string => Object.values(englishTexts()).join('');

/** The ids of all messages with this prefix, in the order of the catalog: `language.unit-missing`. */
export const messageIds = <Prefix extends string>(prefix: Prefix): readonly IdOf<Prefix>[] =>
  [...english().matchAll(new RegExp(`^${prefix}--([\\w-]+) =`, 'gm'))].map(
    ([, key]) => `${prefix}.${key}` as IdOf<Prefix>,
  );

type IdOf<Prefix extends string> = Extract<MessageId, `${Prefix}.${string}`>;

/** A message with a dot leader in each of its holes, to show on a page what it says. */
export function withOpenHoles(id: MessageId): Message {
  const entry = new RegExp(`^${id.replace('.', '--')} =.*(?:\\n[ ].*)*`, 'm').exec(english())?.[0] ?? '';
  const holes = [...entry.matchAll(/\$([\w-]+)/g)].map(([, hole]) => [hole ?? '', name('…')]);
  return { kind: 'message', id, holes: Object.fromEntries(holes) };
}

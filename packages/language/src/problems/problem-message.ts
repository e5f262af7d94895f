import { type Hole, type Message, type MessageHoles, messageIds } from '@cribwright/messages';

/** Everything that the language says about a text. A key is a code, and after `--` which of its sentences. */
export type ProblemKey = keyof MessageHoles extends infer Id
  ? Id extends `language.${infer Key}`
    ? Key
    : never
  : never;

/** What fills the holes of a message about a text. */
export type ProblemHoles<Key extends ProblemKey> = MessageHoles[`language.${Key}`];

/** As much of the plan as a message repeats, in characters. */
const longestHole = 400;
const keptOfLong = 60;

/** A message about a text. What it repeats of the plan is cut where it would fill the screen. */
export const problemMessage = <Key extends ProblemKey>(key: Key, holes: ProblemHoles<Key>): Message => ({
  kind: 'message',
  id: `language.${key}`,
  holes: Object.fromEntries(Object.entries<Hole>(holes).map(([hole, content]) => [hole, shortened(content)])),
});

function shortened(content: Hole): Hole {
  if (typeof content === 'string' || !('kind' in content)) return content;
  if (content.kind === 'list') return { ...content, items: content.items.map(shortened) };
  return content.kind === 'name' && content.text.length > longestHole
    ? { ...content, text: `${content.text.slice(0, keptOfLong)}…` }
    : content;
}

/** The code that a key belongs to: `unknown-name--near` is a sentence of `unknown-name`. */
export const codeOf = (key: string): string => key.split('--')[0] ?? key;

/** The keys of all sentences of the language, in the order of the catalog. */
export const problemKeys: readonly ProblemKey[] = messageIds('language').map(
  (id) => id.slice('language.'.length) as ProblemKey,
);

/** Every code that a problem of the text may have. */
export const languageCodes: readonly string[] = [...new Set(problemKeys.map(codeOf))];

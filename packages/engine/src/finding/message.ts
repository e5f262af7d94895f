/** The names of the `{holes}` in a message's words. */
export type Holes<Words extends string> = Words extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Holes<Rest>
  : never;

/**
 * What is said to a person. `text` is the English; `id` and `holes` let another language say the same.
 */
export interface Message {
  /** `crib-height.too-high` */
  readonly id: string;
  readonly text: string;
  readonly holes: Readonly<Record<string, string>>;
}

/**
 * A table of messages: each line's words with its holes in braces. A call with a hole missing or misspelled
 * does not compile.
 */
export function messages<const Table extends Readonly<Record<string, string>>>(prefix: string, table: Table) {
  return <Key extends keyof Table & string>(
    key: Key,
    holes: Readonly<Record<Holes<Table[Key]>, string>>,
  ): Message => ({ id: `${prefix}.${key}`, text: fill(table[key] ?? '', holes), holes });
}

/** Puts the holes' contents into words. An unknown hole stays visible, so that nothing is silently lost. */
export const fill = (words: string, holes: Readonly<Record<string, string>>): string =>
  words.replace(/\{([^{}]+)\}/g, (whole, name: string) => holes[name] ?? whole);

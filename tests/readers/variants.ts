import type { BoundBlock, BoundFile, BoundProperty, PropertySchema } from '@cribwright/language';

/** One line of a text, with the line of the schema that it follows: `crib` and `courses`. */
export interface Line {
  readonly key: string;
  readonly property: PropertySchema;
  readonly bound: BoundProperty;
}

/** The name of a property in this test: `crib: courses`. */
export const keyOf = (block: { readonly keyword: string }, property: PropertySchema): string =>
  `${block.keyword}: ${property.key}`;

/** Every line of a file that a schema property reads, in order. */
export const linesOf = (file: BoundFile): readonly Line[] => file.blocks.flatMap(linesIn);

const linesIn = (block: BoundBlock): readonly Line[] => [
  ...block.properties.map((bound) => ({
    key: keyOf(block.schema, bound.schema),
    property: bound.schema,
    bound,
  })),
  ...block.blocks.flatMap(linesIn),
];

/** Words and names that have another of their kind, where a line has no number to change. */
const others: readonly (readonly [RegExp, string])[] = [
  [/\bWood\b/, 'Beech'],
  [/\bYard\b/, 'Lot'],
  [/\brail\b/, 'joists'],
  [/\brail, joists\b/, 'rail'],
  [/\bunder +B\b/, 'under A'],
  [/\bS1\b/, 'S2'],
  [/\bon +truck\b/, 'on car'],
  [/\bpassenger side\b/, 'driver side'],
  [/\bforward\b/, 'rearward'],
  [/\bload +S1\b/, 'S2'],
  [/\bS2 base\b/, 'S2 head'],
  [/\bPickets\b/, 'Stakes'],
  [/\bStand\b/, 'Again'],
  [/\blesser\b/, 'species'],
  [/\bdry\b/, 'green'],
  [/\bmay give way\b/, 'by pressure'],
  [/\bBlock4x4\b/, 'Block6x6'],
];

/** Ways to say something else in a line: without it, another number, another word or name. */
export function* variantsOf(text: string, { property, bound }: Line): Generator<string> {
  const { start, end } = bound.span;
  const line = text.slice(start, end);
  const put = (other: string) => text.slice(0, start) + other + text.slice(end);
  if (property.required !== true) yield put('');
  for (const term of bound.terms) {
    const from = term.start - start;
    const word = line.slice(from, term.end - start);
    const instead = (other: string) => put(line.slice(0, from) + other + line.slice(from + word.length));
    if (term.kind === 'text') yield instead(word.replace(/"$/, ' and more"'));
    if (term.kind !== 'number') continue;
    const number = Number(word.replaceAll(',', ''));
    for (const other of Number.isInteger(number)
      ? [number + 1, number - 1, number * 2]
      : [number * 1.5, number / 2])
      yield instead(String(other));
  }
  if (property.key === 'size') yield put(line.replace('4x4', '6x6'));
  for (const [word, other] of others) if (word.test(line)) yield put(line.replace(word, other));
}

import type { Interval } from '../model/interval.js';
import type { Ref } from '../model/ref.js';
import type { SourceNote } from '../model/source-note.js';
import type { Figure } from './figure.js';
import { print, printWorking } from './print.js';

export interface Head {
  readonly key: string;
  readonly label: string;
  readonly dimension: Figure['dimension'];
  readonly unit: string;
  readonly rounding: Figure['rounding'];
  readonly ref?: Ref | undefined;
  readonly governs?: string | undefined;
  readonly assumes?: readonly string[] | undefined;
}

const settle = ({ ref, governs, assumes, ...head }: Head) => ({
  ...head,
  ...(ref === undefined ? {} : { ref }),
  ...(governs === undefined ? {} : { governs }),
  ...(assumes === undefined ? {} : { assumes }),
});

/** A figure that is not worked out: typed in the plan, set by policy, taken from a table. */
export const given = (head: Head, value: Interval | undefined, source: SourceNote): Figure => ({
  ...settle(head),
  value,
  inputs: [],
  source,
});

/** A figure read off the places in the plan, as with a tape. `how` says between what. */
export const measured = (head: Head, value: Interval | undefined, how: string): Figure => {
  const figure = given(head, value, { kind: 'computed' });
  return { ...figure, formula: { names: how, numbers: print(figure) } };
};

/**
 * A figure worked out from others. In `formula` each input stands in braces, `{ratio} × {width}`; from it come
 * the line with names and the line with numbers.
 */
export function computed(
  head: Head,
  value: Interval | undefined,
  formula: string,
  inputs: Readonly<Record<string, Figure>>,
  source: SourceNote = { kind: 'computed' },
): Figure {
  const put = (word: (input: Figure) => string) =>
    formula.replace(/\{(\w+)\}/g, (whole, name: string) => {
      const input = inputs[name];
      return input === undefined ? whole : word(input);
    });
  return {
    ...settle(head),
    value,
    formula: { names: put((f) => f.label), numbers: put(printWorking) },
    inputs: Object.values(inputs),
    source,
  };
}

/** The same figure under another key or label, or with what governs it said. */
export const renamed = (figure: Figure, change: Partial<Head>): Figure => ({
  ...figure,
  ...settle({ ...figure, ...change }),
});

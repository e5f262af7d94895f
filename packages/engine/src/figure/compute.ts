import type { Interval } from '../model/interval.js';
import type { Ref } from '../model/ref.js';
import type { SourceNote } from '../model/source-note.js';
import type { Figure, FigureSource } from './figure.js';
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

/** A figure under way. */
type Draft = { -readonly [K in keyof Figure]?: Figure[K] };

/** What the head says. Written out key by key: a plan of a hundred cribs has ten thousand figures. */
function settle({ key, label, dimension, unit, rounding, ref, governs, assumes }: Head) {
  const figure: Draft & Pick<Figure, 'key' | 'label' | 'dimension' | 'unit' | 'rounding'> = {
    key,
    label,
    dimension,
    unit,
    rounding,
  };
  if (ref !== undefined) figure.ref = ref;
  if (governs !== undefined) figure.governs = governs;
  if (assumes !== undefined) figure.assumes = assumes;
  return figure;
}

const none: readonly Figure[] = [];
const workedOut: FigureSource = { kind: 'computed' };

/** A figure that is not worked out: typed in the plan, set by policy, taken from a table. */
export const given = (head: Head, value: Interval | undefined, source: SourceNote): Figure =>
  Object.assign(settle(head), { value, inputs: none, source });

/**
 * A figure that no short sum of other figures gives: read off the places in the plan as with a tape, or the answer
 * of a balance. `how` says in words between what it is measured, or what it balances.
 */
export const measured = (head: Head, value: Interval | undefined, how: string): Figure => {
  const figure = Object.assign(settle(head), { value, inputs: none, source: workedOut });
  return Object.assign(figure, { formula: { names: how, numbers: print(figure) } });
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
  source: FigureSource = workedOut,
): Figure {
  return Object.assign(settle(head), {
    value,
    formula: filledIn(formula, inputs),
    inputs: Object.values(inputs),
    source,
  });
}

/** A formula with names, and with numbers put in. What stands in braces and is no input stays as it is. */
function filledIn(
  formula: string,
  inputs: Readonly<Record<string, Figure>>,
): { names: string; numbers: string } {
  let names = '';
  let numbers = '';
  let done = 0;
  for (let open = formula.indexOf('{'); open >= 0; open = formula.indexOf('{', done)) {
    const close = formula.indexOf('}', open);
    if (close < 0) break;
    const between = formula.slice(done, open);
    const input = inputs[formula.slice(open + 1, close)];
    const whole = input === undefined ? formula.slice(open, close + 1) : undefined;
    names += between + (input?.label ?? whole);
    numbers += between + (input === undefined ? whole : printWorking(input));
    done = close + 1;
  }
  const rest = formula.slice(done);
  return { names: names + rest, numbers: numbers + rest };
}

/** The same figure under another key or label, or with what governs it said. */
export const renamed = (figure: Figure, change: Partial<Head>): Figure =>
  Object.assign({ ...figure }, settle({ ...figure, ...change }));

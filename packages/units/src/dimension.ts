/**
 * What kind of quantity a number is. `ratio` covers per cent and grade; `count` is whole things.
 *
 * `stiffness` is force for each unit of length, so a load spread along a line has the same dimension.
 */
export type Dimension = (typeof dimensions)[number];

/** Every dimension, each once. */
export const dimensions = [
  'length',
  'force',
  'mass',
  'angle',
  'ratio',
  'count',
  'pressure',
  'area',
  'volume',
  'duration',
  'density',
  'unit weight',
  'stiffness',
  'moment',
] as const;

const names: Readonly<Record<Dimension, string>> = {
  length: 'a length',
  force: 'a weight',
  mass: 'a mass',
  angle: 'an angle',
  ratio: 'a plain number',
  count: 'a count',
  pressure: 'a pressure',
  area: 'an area',
  volume: 'a volume',
  duration: 'a time',
  density: 'a mass for each volume',
  'unit weight': 'a weight for each volume',
  stiffness: 'a weight for each length',
  moment: 'a turning force',
};

/** The dimension in words, with its article: `a length`, `a weight`. */
export const describe = (dimension: Dimension): string => names[dimension];

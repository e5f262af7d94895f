import { type Dimension, describe } from '@cribwright/units';

const examples: Readonly<Record<Dimension, string>> = {
  length: '3 ft 4 in',
  force: '12,000 lb',
  mass: '5,000 kg',
  angle: '45 deg',
  ratio: '8 %',
  count: '4',
  pressure: '500 psi',
  area: '12 in2',
  volume: '20 yd3',
  duration: '5 min',
  density: '500 kg/m3',
  'unit weight': '100 pcf',
  stiffness: '3,000 lb/in',
  moment: '2,000 lb ft',
};

/** An example of what may be written, in the first of the dimensions that are due. */
export const exampleOf = (dimensions: readonly Dimension[]): string => examples[dimensions[0] ?? 'count'];

/** What is due, in words: `a length`; `a weight`; `a plain number or an angle`. */
export const dueOf = (dimensions: readonly Dimension[]): string => {
  // Weights may be written as masses; the word for it is still a weight.
  const shown = dimensions.includes('force') ? dimensions.filter((d) => d !== 'mass') : dimensions;
  return shown.map(describe).join(' or ');
};

/** With its first letter large, to start a sentence. */
export const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

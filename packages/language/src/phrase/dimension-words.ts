import { type List, list, type Message, message, name, type TermId, term } from '@cribwright/messages';
import { type Dimension, dimensionOf, divide, type Vector, vectorOf } from '@cribwright/units';

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

const terms: Readonly<Record<Dimension, TermId>> = {
  length: 'expected.length',
  force: 'expected.force',
  mass: 'expected.mass',
  angle: 'expected.angle',
  ratio: 'expected.ratio',
  count: 'expected.count',
  pressure: 'expected.pressure',
  area: 'expected.area',
  volume: 'expected.volume',
  duration: 'expected.duration',
  density: 'expected.density',
  'unit weight': 'expected.unit-weight',
  stiffness: 'expected.stiffness',
  moment: 'expected.moment',
};

/** An example of what may be written, in the first of the dimensions that are due. */
export const exampleOf = (dimensions: readonly Dimension[]): string => examples[dimensions[0] ?? 'count'];

/** What is due, in words: `a length`; `a weight`; `a plain number or an angle`. */
export const dueOf = (dimensions: readonly Dimension[]): List => {
  // Weights may be written as masses; the word for it is still a weight.
  const shown = dimensions.includes('force') ? dimensions.filter((d) => d !== 'mass') : dimensions;
  return list(
    shown.map((d) => term(terms[d])),
    'or',
  );
};

/** What a calculation measures, in words: `a length`, `a weight times a length`. */
export function measureOf(v: Vector): Message {
  const dimension = dimensionOf(v);
  if (dimension !== undefined) return term(terms[dimension]);
  const overForce = dimensionOf(divide(v, vectorOf('force')));
  if (overForce !== undefined) return message('expected.weight-times', { other: term(terms[overForce]) });
  if (v.mass === 0 && v.time === 0 && v.angle === 0)
    return message('expected.length-power', { power: name(String(v.length)) });
  return term('expected.mixed');
}

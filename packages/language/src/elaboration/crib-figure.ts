import { vectorOf } from '@cribwright/units';
import { type Amount, evaluate } from '../phrase/evaluate.js';
import type { Expression } from '../phrase/expression.js';
import { cribProperties } from '../schema/crib.js';
import { timberProperties } from '../schema/timber.js';
import { outermost } from './expansion.js';
import type { Writing } from './writing.js';

/**
 * What calculations may ask of a crib: `A height` is its courses times the depth of its timber,
 * as the checks count it; shims and wedges come on top.
 */
export function cribFigure(w: Writing, e: Extract<Expression, { kind: 'figure' }>): Amount | undefined {
  const block = w.resolve(e.subject, outermost)?.target.block;
  if (block?.schema.keyword !== 'crib') return undefined;
  const wood = w.said(block, cribProperties.timber);
  const timber = w.resolve(wood?.values.timber, outermost)?.target.block;
  const dressed = timber && w.said(timber, timberProperties.dressed);
  const values = w.values(outermost);
  const length = wood && evaluate(wood.values.length.expression, values);
  if (e.figure === 'length' || e.figure === 'width') return length;
  const depth = dressed && evaluate(dressed.values.depth.expression, values);
  const courses = w.said(block, cribProperties.courses);
  const count = courses && evaluate(courses.values.courses.expression, values);
  if (e.figure !== 'height' || !depth || !count) return undefined;
  const height = count.low * depth.low;
  return { low: height, high: height, vector: vectorOf('length') };
}

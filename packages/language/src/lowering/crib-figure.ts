import { courseHeight, dressed, narrowWidth, type Policy } from '@cribwright/model';
import { vectorOf } from '@cribwright/units';
import type { Amount } from '../phrase/evaluate.js';
import type { Expression } from '../phrase/expression.js';
import { cribProperties } from '../schema/crib.js';
import { overhangOf } from './crib.js';
import { outermost } from './expansion.js';
import type { Lowering } from './lowering.js';
import { timberOf } from './material.js';

const at0 = outermost;
const p = cribProperties;

/**
 * What calculations may ask of a crib, as the checks count it: `A height` is that of its courses of timber as the
 * policy has it dressed, shims and wedges come on top; `A width` is outside to outside of its contacts, the narrow
 * way; `A length` is that of its timbers.
 */
export function cribFigure(
  w: Lowering,
  policy: Policy,
  e: Extract<Expression, { kind: 'figure' }>,
): Amount | undefined {
  const block = w.resolve(e.subject, at0)?.target.block;
  if (block?.schema.keyword !== 'crib') return undefined;
  const number = (q: Parameters<Lowering['number']>[0], as?: 'length') => w.number(q, at0, block.uri, as);
  const wood = w.propertyOf(block, p.timber);
  const type = w.resolve(wood?.values.timber, at0)?.target.block;
  const given = timberOf(w, type, number(wood?.values.length, 'length'));
  const timber = given && dressed(given, policy);
  if (timber === undefined) return undefined;
  if (e.figure === 'length') return exact(timber.length);
  if (e.figure === 'height') {
    const courses = number(w.propertyOf(block, p.courses)?.values.courses);
    return courses === undefined ? undefined : exact(courseHeight({ courses, timber }));
  }
  if (e.figure !== 'width') return undefined;
  const layout = w.propertyOf(block, p.layout)?.values;
  const [lengthwise, crosswise] = [number(layout?.lengthwise), number(layout?.crosswise)];
  if (lengthwise === undefined || crosswise === undefined) return undefined;
  const overhang = overhangOf(w, policy, block, at0);
  return exact(narrowWidth({ timber, overhang, layout: { lengthwise, crosswise } }));
}

const exact = (meters: number): Amount => ({ low: meters, high: meters, vector: vectorOf('length') });

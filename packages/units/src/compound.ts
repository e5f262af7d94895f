import { fine, type OrderFault, type QuantityProblem, type Reading, wrong } from './problem.js';
import type { Quantity } from './quantity.js';
import { fromSI, quantity } from './quantity.js';
import type { Unit } from './unit.js';

/** One part of a quantity written in several units: `3 ft`, then `4 in`. Offsets as in the text. */
export interface QuantityPart {
  readonly number: number;
  readonly unit: Unit;
  readonly from: number;
  readonly to: number;
}

const chains: readonly (readonly string[])[] = [
  ['yd', 'ft', 'in'],
  ['m', 'cm', 'mm'],
  ['h', 'min', 's'],
];

/** True where `next` may follow `unit` in one quantity: inches after feet, minutes after hours. */
export const mayFollow = (unit: Unit, next: Unit): boolean =>
  chains.some((chain) => chain.includes(unit.id) && chain.indexOf(next.id) > chain.indexOf(unit.id));

/**
 * Joins the parts of one quantity: `3 ft 4 in`. Each later part must be in a smaller unit of the same family, not
 * negative, and less than one of the unit before it; all but the last must be whole.
 */
export function compound(parts: readonly QuantityPart[]): Reading<Quantity> {
  const first = parts[0];
  if (first === undefined)
    return wrong({ id: 'number-missing', from: 0, to: 0, text: 'a number is missing' });
  const sign = first.number < 0 || Object.is(first.number, -0) ? -1 : 1;
  let sum = quantity(first.number, first.unit).value;
  let last = first;
  for (const part of parts.slice(1)) {
    const problem = unfit(last, part);
    if (problem !== undefined) return wrong(problem);
    sum += sign * quantity(part.number, part.unit).value;
    last = part;
  }
  return fine({ value: sum, dimension: first.unit.dimension });
}

function unfit(last: QuantityPart, part: QuantityPart): QuantityProblem | undefined {
  const most = Math.round(fromSI(quantity(1, last.unit).value, part.unit));
  const say = (fault: OrderFault['fault'], text: string): QuantityProblem => ({
    id: 'unit-order',
    from: part.from,
    to: part.to,
    text,
    order: { fault, before: last.unit.id, unit: part.unit.id, most },
  });
  if (!mayFollow(last.unit, part.unit)) {
    return say(
      'order',
      `${part.unit.id} cannot follow ${last.unit.id}; a length in two units reads 3 ft 4 in`,
    );
  }
  if (!Number.isInteger(last.number)) {
    return say(
      'whole',
      `a part of ${last.unit.id} and then ${part.unit.id}: write whole ${last.unit.id} first`,
    );
  }
  if (part.number < 0) return say('below zero', `${part.unit.id} after ${last.unit.id} cannot be below zero`);
  if (part.number >= most) {
    return say(
      'too many',
      `${most} ${part.unit.id} make one ${last.unit.id}; write less than ${most} ${part.unit.id}`,
    );
  }
  return undefined;
}

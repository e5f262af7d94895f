import type { ElementId, Plan } from '@cribwright/model';

/**
 * What an element of a plan comes to, to be compared as text: numbers to ten digits, so that `12 in` and `1 ft` are
 * the same, without the places where it was written. `undefined` where the plan has no such element.
 */
export function elementValue(
  plan: Plan,
  id: ElementId,
  idNow: (id: ElementId) => ElementId,
): string | undefined {
  const found = elementsOf(plan).find((e) => e.id === id);
  return found === undefined ? undefined : valueText(found, idNow);
}

const elementsOf = (plan: Plan): readonly { readonly id: ElementId }[] => [
  ...plan.vehicles,
  ...plan.cribs,
  ...plan.stepChocks,
  ...plan.struts,
  ...plan.ties,
  ...plan.chocks,
  ...plan.pads,
  ...plan.toolLoads,
  ...plan.egress,
  { ...plan.ground, id: 'ground' },
];

const valueText = (value: object, idNow: (id: ElementId) => ElementId): string =>
  JSON.stringify(value, (key, v: unknown) => {
    if (key === 'ref') return undefined;
    if (typeof v === 'number') return Number(v.toPrecision(10));
    return typeof v === 'string' ? idNow(v) : v;
  });

import type { BoundBlock, BoundFile } from '@cribwright/language';
import { blockAt, propertyAt } from '@cribwright/language/internal';
import type { PlanReply } from '@cribwright/workspace';
import type { Checked } from '@cribwright/workspace/internal';
import { rangeOf } from '../context/positions.js';

/** The plan that a place in the text belongs to, as it was analyzed. */
export function planAround(file: BoundFile, checked: Checked, offset: number): PlanReply | undefined {
  for (let block = blockAt(file, offset); block; block = block.parent) {
    if (block.schema.keyword === 'plan') return replyOf(file, checked, block);
  }
  return undefined;
}

export function replyOf(file: BoundFile, checked: Checked, plan: BoundBlock): PlanReply | undefined {
  const { start } = rangeOf(file, plan.span);
  return checked.plans.find(({ plan: { ref }, places }) => {
    const place = places[ref.element];
    return place?.range.start.line === start.line && place.range.start.character === start.character;
  });
}

/** The element of the plan at a place, and the line of it. */
export function elementAt(
  file: BoundFile,
  offset: number,
): { readonly element: string; readonly property: string | undefined } | undefined {
  const line = propertyAt(file, offset);
  if (line?.block?.schema.numbered === line?.schema && line)
    return { element: `step/${line.key}`, property: undefined };
  for (let block = blockAt(file, offset); block; block = block.parent) {
    if (block.elementId === undefined) continue;
    return { element: block.elementId, property: block === line?.block ? line.key : undefined };
  }
  return undefined;
}

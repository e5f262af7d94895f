import type { Pad } from '@cribwright/engine';
import type { BoundBlock } from '../binding/bound-file.js';
import { padProperties } from '../schema/crib.js';
import type { Making } from './making.js';
import { notInPlan } from './not-in-plan.js';

export function padOf(m: Making, block: BoundBlock): Pad | undefined {
  const { w, within } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `pad/${name}`;
  w.placeBlock(id, block);
  const size = w.said(block, padProperties.size);
  const length = w.number(size?.values.length, within, block.uri, 'length');
  const width = w.number(size?.values.width, within, block.uri, 'length');
  const thickness = w.number(
    w.said(block, padProperties.thickness)?.values.thickness,
    within,
    block.uri,
    'length',
  );
  const under = w.idOf(w.said(block, padProperties.under)?.values.under, within);
  if (length === undefined || width === undefined || thickness === undefined || under === undefined) {
    w.tell(notInPlan(block.headSpan, `pad ${name}`), block.uri, within);
    return undefined;
  }
  const material = w.said(block, padProperties.material)?.values.material.text;
  return {
    kind: 'pad',
    id,
    name,
    length,
    width,
    thickness,
    ...(material === undefined ? {} : { material }),
    under,
    ref: { element: id },
  };
}

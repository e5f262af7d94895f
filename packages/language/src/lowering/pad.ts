import type { Pad } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { padProperties } from '../schema/crib.js';
import type { LoweringContext } from './lowering-context.js';
import { notInPlan } from './not-in-plan.js';

export function padOf(m: LoweringContext, block: BoundBlock): Pad | undefined {
  const { w, within } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `pad/${name}`;
  w.placeBlock(id, block);
  const size = w.propertyOf(block, padProperties.size);
  const length = w.number(size?.values.length, within, block.uri, 'length');
  const width = w.number(size?.values.width, within, block.uri, 'length');
  const thickness = w.number(
    w.propertyOf(block, padProperties.thickness)?.values.thickness,
    within,
    block.uri,
    'length',
  );
  const under = w.idOf(w.propertyOf(block, padProperties.under)?.values.under, within);
  if (length === undefined || width === undefined || thickness === undefined || under === undefined) {
    w.report(notInPlan(block.headSpan, `pad ${name}`), block.uri, within);
    return undefined;
  }
  const material = w.propertyOf(block, padProperties.material)?.values.material.text;
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

import type { StepChock } from '@cribwright/model';
import { typeChain } from '../binding/file-scope.js';
import type { BoundBlock } from '../bound/bound-file.js';
import { stepChockProperties } from '../schema/crib.js';
import { stepChockTypeProperties } from '../schema/gear.js';
import { bare, capturesOf } from './captures.js';
import { outermost } from './expansion.js';
import type { LoweringContext } from './lowering-context.js';
import { notInPlan } from './not-in-plan.js';
import { standsOn } from './stands-on.js';
import { supportPlace } from './support-place.js';

export function stepChockOf(m: LoweringContext, block: BoundBlock): StepChock | undefined {
  const { w, within } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `step chock/${name}`;
  w.placeBlock(id, block);
  const uri = block.uri;
  const type = w.resolve(block.type, within)?.target.block;
  const chain = type ? typeChain(type, w.around) : [];
  const heights = w.propertyOf(chain, stepChockTypeProperties.heights);
  const rating = w.propertyOf(chain, stepChockTypeProperties.rating);
  const captures = capturesOf(m, w.propertyOf(block, stepChockProperties.captures), id);
  const at = supportPlace(m, w.propertyOf(block, stepChockProperties.at), uri, captures[0]?.placed);
  if (!at || !heights) {
    w.report(notInPlan(block.headSpan, `step chock ${name}`), uri, within);
    return undefined;
  }
  return {
    kind: 'step chock',
    id,
    name,
    at,
    ...(type?.name === undefined ? {} : { typeName: type.name }),
    heights: heights.values.heights.flatMap(
      (h) => w.number(h.height, outermost, heights.block.uri, 'length') ?? [],
    ),
    capacity: rating && w.number(rating.values.rating, outermost, rating.block.uri, 'force'),
    captures: captures.map(bare),
    standsOn: standsOn(m, block, w.propertyOf(block, stepChockProperties.standsOn)),
    source: rating ? w.source(rating.values, [rating.block]) : { kind: 'unknown' },
    ref: { element: id },
  };
}

import type { Cab } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { problemMessage } from '../problems/problem-message.js';
import { cabProperties } from '../schema/cab.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';
import { notInPlan } from './not-in-plan.js';
import { usualMount } from './stiffness.js';

/** A cab that sits on mounts of its own. */
export function cabOf(w: Lowering, vehicle: string, chain: readonly BoundBlock[]): Cab | undefined {
  const blocks = chain.flatMap((b) => b.blocks.filter((c) => c.schema.keyword === 'cab'));
  const own = blocks[0];
  if (!own) return undefined;
  const ref = { element: vehicle, property: 'cab' };
  w.place(ref, own.uri, own.headSpan, { block: own });
  const runs = w.propertyOf(blocks, cabProperties.runs);
  const heavy = w.propertyOf(blocks, cabProperties.weight);
  const center = w.propertyOf(blocks, cabProperties.center);
  const extent = w.interval(runs?.values.extent, at0, runs?.block.uri ?? own.uri, 'length');
  const weight = w.interval(heavy?.values.weight, at0, heavy?.block.uri ?? own.uri, 'force');
  const x = w.interval(center?.values.back, at0, center?.block.uri ?? own.uri, 'length');
  const z = w.interval(center?.values.high, at0, center?.block.uri ?? own.uri, 'length');
  const home = blocks.find((b) => w.propertiesOf(b, cabProperties.mount).length > 0);
  if (!extent || !weight || !x || !z || !home) {
    w.report(notInPlan(own.headSpan, problemMessage('not-in-plan--cab', {})), own.uri);
    return undefined;
  }
  const mounts = w.propertiesOf(home, cabProperties.mount).flatMap(({ values, block }) => {
    const back = w.number(values.back, at0, block.uri, 'length');
    const offset = w.number(values.offset, at0, block.uri, 'length');
    if (back === undefined || offset === undefined) return [];
    const spring = values.spring.text;
    const stiffness = w.number(values.stiffness, at0, block.uri, 'stiffness') ?? usualMount[spring];
    return [
      { name: values.name.text, x: back, offsets: offset === 0 ? [0] : [-offset, offset], spring, stiffness },
    ];
  });
  return { from: extent.low, to: extent.high, weight, center: { x, z }, mounts, ref };
}

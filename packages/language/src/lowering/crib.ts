import type { Crib, Policy } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import type { Yields } from '../bound/shape.js';
import { cribProperties } from '../schema/crib.js';
import { bare, capturesOf } from './captures.js';
import type { Expansion } from './expansion.js';
import type { Lowering } from './lowering.js';
import type { LoweringContext } from './lowering-context.js';
import { timberOf } from './material.js';
import { notInPlan } from './not-in-plan.js';
import { standsOn } from './stands-on.js';
import { supportPlace } from './support-place.js';

export function cribOf(m: LoweringContext, block: BoundBlock): Crib | undefined {
  const { w, within, policy } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `crib/${name}`;
  w.placeBlock(id, block);
  const p = cribProperties;
  const uri = block.uri;
  const wood = w.propertyOf(block, p.timber);
  const long = w.number(wood?.values.length, within, uri, 'length');
  const timber = timberOf(w, w.resolve(wood?.values.timber, within)?.target.block, long);
  const layout = w.propertyOf(block, p.layout);
  const lengthwise = w.number(layout?.values.lengthwise, within, uri);
  const crosswise = w.number(layout?.values.crosswise, within, uri);
  const courses = w.number(w.propertyOf(block, p.courses)?.values.courses, within, uri);
  const captures = capturesOf(m, w.propertyOf(block, p.captures), id);
  const at = supportPlace(m, w.propertyOf(block, p.at), uri, captures[0]?.placed);
  if (!timber || lengthwise === undefined || crosswise === undefined || courses === undefined || !at) {
    w.report(notInPlan(block.headSpan, `crib ${name}`), uri, within);
    return undefined;
  }
  const wedges = w.propertyOf(block, p.wedges);
  return {
    kind: 'crib',
    id,
    name,
    timber,
    layout: { lengthwise, crosswise },
    base: w.propertyOf(block, p.base)?.values.base.text ?? 'open',
    top: w.propertyOf(block, p.top)?.values.top.text ?? 'lengthwise',
    courses,
    overhang: overhangOf(w, policy, block, within),
    wedges: wedges && wedgesOf(m, wedges.values, uri),
    shims: w.number(w.propertyOf(block, p.shims)?.values.thickness, within, uri, 'length') ?? 0,
    standsOn: standsOn(m, block, w.propertyOf(block, p.standsOn)),
    at,
    captures: captures.map(bare),
    slidIn: w.propertyOf(block, p.slidIn) !== undefined,
    ref: { element: id },
  };
}

/** What its text says, else the least that the policy asks for. */
export function overhangOf(w: Lowering, policy: Policy, block: BoundBlock, within: Expansion): number {
  const least = policy.limits['least overhang'].value;
  const said = w.propertyOf(block, cribProperties.overhang)?.values.overhang;
  return w.number(said, within, block.uri, 'length') ?? (typeof least === 'number' ? least : 0);
}

type WedgeValues = Yields<typeof cribProperties.wedges>;

function wedgesOf({ w, within, policy }: LoweringContext, values: WedgeValues, uri: string): Crib['wedges'] {
  const usual = policy.limits['wedge travel'].value;
  const travel = w.interval(values.travel, within, uri, 'length');
  return {
    pairs: w.number(values.pairs, within, uri) ?? 1,
    travel:
      travel ?? (typeof usual === 'object' ? usual : { low: 0, high: typeof usual === 'number' ? usual : 0 }),
    preload: w.number(values.preload, within, uri, 'force') ?? 0,
  };
}

import type { Crib, Policy } from '@cribwright/engine';
import type { BoundBlock } from '../binding/bound-file.js';
import type { Yields } from '../phrase/shape.js';
import { cribProperties } from '../schema/crib.js';
import { bare, capturesOf } from './captures.js';
import type { Expansion } from './expansion.js';
import type { Making } from './making.js';
import { timberOf } from './material.js';
import { notInPlan } from './not-in-plan.js';
import { standsOn } from './stands-on.js';
import { supportPlace } from './support-place.js';
import type { Writing } from './writing.js';

export function cribOf(m: Making, block: BoundBlock): Crib | undefined {
  const { w, within, policy } = m;
  const name = `${within.prefix}${block.name ?? ''}`;
  const id = `crib/${name}`;
  w.placeBlock(id, block);
  const p = cribProperties;
  const uri = block.uri;
  const wood = w.said(block, p.timber);
  const long = w.number(wood?.values.length, within, uri, 'length');
  const timber = timberOf(w, w.resolve(wood?.values.timber, within)?.target.block, long);
  const layout = w.said(block, p.layout);
  const lengthwise = w.number(layout?.values.lengthwise, within, uri);
  const crosswise = w.number(layout?.values.crosswise, within, uri);
  const courses = w.number(w.said(block, p.courses)?.values.courses, within, uri);
  const captures = capturesOf(m, w.said(block, p.captures), id);
  const at = supportPlace(m, w.said(block, p.at), uri, captures[0]?.placed);
  if (!timber || lengthwise === undefined || crosswise === undefined || courses === undefined || !at) {
    w.tell(notInPlan(block.headSpan, `crib ${name}`), uri, within);
    return undefined;
  }
  const wedges = w.said(block, p.wedges);
  return {
    kind: 'crib',
    id,
    name,
    timber,
    layout: { lengthwise, crosswise },
    base: w.said(block, p.base)?.values.base.text ?? 'open',
    top: w.said(block, p.top)?.values.top.text ?? 'lengthwise',
    courses,
    overhang: overhangOf(w, policy, block, within),
    wedges: wedges && wedgesOf(m, wedges.values, uri),
    shims: w.number(w.said(block, p.shims)?.values.thickness, within, uri, 'length') ?? 0,
    standsOn: standsOn(m, block, w.said(block, p.standsOn)),
    at,
    captures: captures.map(bare),
    slidIn: w.said(block, p.slidIn) !== undefined,
    ref: { element: id },
  };
}

/** What its text says, else the least that the policy asks for. */
export function overhangOf(w: Writing, policy: Policy, block: BoundBlock, within: Expansion): number {
  const least = policy.limits['least overhang'].value;
  const said = w.said(block, cribProperties.overhang)?.values.overhang;
  return w.number(said, within, block.uri, 'length') ?? (typeof least === 'number' ? least : 0);
}

type WedgeValues = Yields<typeof cribProperties.wedges>;

function wedgesOf({ w, within, policy }: Making, values: WedgeValues, uri: string): Crib['wedges'] {
  const usual = policy.limits['wedge travel'].value;
  const travel = w.interval(values.travel, within, uri, 'length');
  return {
    pairs: w.number(values.pairs, within, uri) ?? 1,
    travel:
      travel ?? (typeof usual === 'object' ? usual : { low: 0, high: typeof usual === 'number' ? usual : 0 }),
    preload: w.number(values.preload, within, uri, 'force') ?? 0,
  };
}

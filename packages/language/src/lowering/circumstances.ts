import { name } from '@cribwright/messages';
import type { Egress, SizeUpItem, WorkingLoad } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { problem } from '../problems/problem.js';
import { egressProperties, loadProperties, sizeUpProperties } from '../schema/plan.js';
import { alongOf } from './along.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';
import type { LoweringContext } from './lowering-context.js';
import { notInPlan } from './not-in-plan.js';
import { sideways } from './sideways.js';

const directions = {
  front: { x: -1, y: 0, z: 0 },
  rear: { x: 1, y: 0, z: 0 },
  'driver side': { x: 0, y: -1, z: 0 },
  'passenger side': { x: 0, y: 1, z: 0 },
  up: { x: 0, y: 0, z: 1 },
  down: { x: 0, y: 0, z: -1 },
} as const;

export function loadOf(m: LoweringContext, block: BoundBlock): WorkingLoad | undefined {
  const { w } = m;
  const id = `load/${block.name ?? ''}`;
  w.placeBlock(id, block);
  const p = loadProperties;
  const at = w.propertyOf(block, p.at)?.values;
  const on = w.idOf(w.propertyOf(block, p.on)?.values.vehicle, at0);
  const x = alongOf(m, at, block.uri);
  const force = w.interval(w.propertyOf(block, p.force)?.values.force, at0, block.uri, 'force');
  const toward = w.propertyOf(block, p.toward)?.values.toward.text;
  if (!block.name || !on || x === undefined || !force || !toward) {
    w.report(notInPlan(block.headSpan, `load ${block.name ?? ''}`), block.uri);
    return undefined;
  }
  const horizontal = toward !== 'up' && toward !== 'down';
  if (horizontal && at?.high === undefined) {
    // At the ground it would tip nothing: the least that it can do, and nobody said so.
    const line = w.propertyOf(block, p.at)?.line.span ?? block.headSpan;
    w.report(
      problem('load-height', line, { load: name(block.name), example: name(loadProperties.at.example) }),
      block.uri,
    );
    w.partial = true;
    return undefined;
  }
  const y = sideways(at?.side?.text, w.number(at?.offset, at0, block.uri, 'length') ?? 0);
  const z = w.number(at?.high, at0, block.uri, 'length') ?? 0;
  return {
    id,
    name: block.name,
    on,
    at: { x, y, z },
    force,
    direction: directions[toward],
    ref: { element: id },
  };
}

export function egressOf(m: LoweringContext, block: BoundBlock, usual: unknown): Egress | undefined {
  const { w } = m;
  const id = `egress/${block.name ?? ''}`;
  w.placeBlock(id, block);
  const p = egressProperties;
  const spots = [...w.propertiesOf(block, p.from).slice(0, 1), ...w.propertiesOf(block, p.to)];
  const points = spots.flatMap(({ values }) => {
    const x = alongOf(m, values, block.uri);
    const offset = w.number(values.offset, at0, block.uri, 'length') ?? 0;
    return x === undefined ? [] : [{ x, y: sideways(values.side?.text, offset) }];
  });
  if (!block.name || points.length < 2) {
    w.report(notInPlan(block.headSpan, `egress ${block.name ?? ''}`), block.uri);
    return undefined;
  }
  const width = w.number(w.propertyOf(block, p.width)?.values.width, at0, block.uri, 'length');
  return {
    id,
    name: block.name,
    points,
    width: width ?? (typeof usual === 'number' ? usual : 0),
    ref: { element: id },
  };
}

export function sizeUpOf(w: Lowering, block: BoundBlock): readonly SizeUpItem[] {
  w.placeBlock('size up', block);
  return (Object.keys(sizeUpProperties) as (keyof typeof sizeUpProperties)[]).flatMap((item) => {
    const finding = w.propertyOf(block, sizeUpProperties[item])?.values.finding.text;
    return finding === undefined ? [] : [{ item, finding, ref: { element: 'size up', property: item } }];
  });
}

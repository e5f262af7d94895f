import type { Axle } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { axleProperties } from '../schema/axle.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';
import { notInPlan } from './not-in-plan.js';
import { fromMemory, usualStiffness } from './stiffness.js';

/** An axle, from its own block and those that it inherits from, nearest first. */
export function axleOf(w: Lowering, vehicle: string, blocks: readonly BoundBlock[]): Axle | undefined {
  const own = blocks[0];
  if (own?.name === undefined) return undefined;
  const name = `axle ${own.name}`;
  const ref = { element: vehicle, property: name };
  w.place(ref, own.uri, own.headSpan, { block: own });
  for (const block of blocks) {
    for (const line of block.properties) {
      w.place({ element: vehicle, property: `${name}/${line.schema.key}` }, block.uri, line.span);
    }
  }
  const at = w.propertyOf(blocks, axleProperties.at);
  const empty = w.propertyOf(blocks, axleProperties.empty);
  const track = w.propertyOf(blocks, axleProperties.track);
  const x = w.number(at?.values.back, at0, at?.block.uri ?? own.uri, 'length');
  const load = w.interval(empty?.values.load, at0, empty?.block.uri ?? own.uri, 'force');
  const wide = w.number(track?.values.track, at0, track?.block.uri ?? own.uri, 'length');
  if (x === undefined || load === undefined || wide === undefined) {
    w.report(notInPlan(own.headSpan, `axle ${name}`), own.uri);
    return undefined;
  }
  // Air may go, the others stay: what nobody said counts as what may go.
  const suspension = w.propertyOf(blocks, axleProperties.suspension)?.values.suspension.text ?? 'air';
  const stiff = w.propertyOf(blocks, axleProperties.stiffness);
  const stiffness = w.number(stiff?.values.stiffness, at0, stiff?.block.uri ?? own.uri, 'stiffness');
  const each = w.number(w.propertyOf(blocks, axleProperties.tires)?.values.each, at0, own.uri);
  return {
    id: name,
    name,
    x,
    emptyLoad: load,
    ...(empty ? { emptyLoadSource: w.source(empty.values, [empty.block]) } : {}),
    track: wide,
    tiresEachSide: each === 1 ? 1 : 2,
    suspension,
    stiffness: stiffness ?? usualStiffness[suspension],
    stiffnessSource: stiffness !== undefined && stiff ? w.source(stiff.values, [stiff.block]) : fromMemory,
    missing: [],
    ref,
  };
}

type Missing = readonly {
  readonly values: {
    readonly axle?: { readonly text: string } | undefined;
    readonly side?: { readonly text: string } | undefined;
  };
}[];

export const missingAt = (axle: Axle, lines: Missing): readonly ('driver' | 'passenger')[] => {
  const sides = lines.flatMap(({ values }) => {
    if (values.axle === undefined || axle.name !== `axle ${values.axle.text}`) return [];
    if (!values.side) return ['driver', 'passenger'] as const;
    return [values.side.text === 'driver side' ? ('driver' as const) : ('passenger' as const)];
  });
  return [...new Set(sides)];
};

import type { Anchor } from '@cribwright/model';
import { lb, planOf, strap, tractor, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const tree = (holds: number | undefined): Anchor => ({
  kind: 'ground anchor',
  name: 'Tree',
  x: 11,
  y: 9,
  holds,
});
const to = (end: Anchor) =>
  check(rule, {
    ...trailerOnCar,
    vehicles: [...trailerOnCar.vehicles, tractor],
    ties: [strap('T2', 'S3', 'S4', { to: end })],
  }).map((f) => f.message.id);

describe('tie-anchor', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('does not pass an anchor of which nobody knows what it holds', () =>
    expect(
      check(
        rule,
        planOf({ struts: trailerOnCar.struts, ties: [strap('T1', 'S1', 'S2', { to: tree(undefined) })] }),
      )[0]?.couldNotRun,
    ).toBe(true));
  it('compares what the anchor holds', () => {
    expect(to(tree(10 * lb))).toEqual(['tie-anchor.holds-less']);
    expect(to(tree(1e6))).toEqual([]);
  });
  it('wants parts that are there and do not move', () => {
    const part = (name: string): Anchor => ({
      kind: 'vehicle part',
      vehicle: tractor.id,
      part: name,
      x: 3,
      y: 0,
      z: 1,
    });
    expect(to(part('cab floor'))).toEqual(['tie-anchor.moves']);
    expect(to(part('wing'))).toEqual(['tie-anchor.no-part']);
    expect(to(part('frame'))).toEqual([]);
  });
  it('finds ends that are not there, or the same', () => {
    expect(to({ kind: 'strut base', strut: 'strut/S9' })).toEqual(['tie-anchor.not-there']);
    expect(to({ kind: 'strut base', strut: 'strut/S3' })).toEqual(['tie-anchor.same-end']);
  });
});

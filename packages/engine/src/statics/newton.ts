import { residual, tangent, tangentInto } from './assemble.js';
import { BlockSystem } from './block-system.js';
import { linksAt } from './link-law.js';
import { LinksAlong } from './links-along.js';
import { solveDense } from './lu.js';
import type { Model } from './model.js';

/** A push of unknown size that moves one point by a given distance. */
export interface Bordered {
  /** What a push of 1 does to the unknowns. */
  readonly direction: Float64Array;
  /** Where the point shall be along the push, counted from q = 0. */
  distance: number;
  /** The size of the push; changed with q. */
  push: number;
}

/** Scaled; out of balance by less than this is in balance. */
const balanced = 1e-9;
/** Where rounding stops the way; a thirtieth of what a scene may be out of balance. */
const nearlyBalanced = 3e-8;
const iterations = 25;
const boundedIterations = 60;
const rounds = 30;
const searches = 40;
/** Of the slope at the beginning, where a search along a line may end. */
const levelEnough = 0.05;

/**
 * One implicit over-damped step: finds q with R(q) + push * P - c (q - from) = 0, from the q that is given.
 *
 * First by Newton with backtracking. Where that stalls, as it may where contacts slip, friction is bounded by the
 * normal forces of the last round: the equations are then those of the lowest point of a convex energy, which is
 * always found; and from there Newton is tried again. Gives way after each iteration.
 *
 * @param quick gives up where Newton stalls.
 * @returns whether it was found. Where not, q and the push are of no use.
 */
export function* dampedStep(
  model: Model,
  q: Float64Array,
  from: Float64Array,
  c: number,
  border: Bordered | undefined,
  quick = false,
): Generator<void, boolean> {
  const step = new Step(model, from, c, border);
  const guess = Float64Array.from(q);
  const push = border?.push ?? 0;
  step.goTo(q, push);
  if (yield* step.newton()) return step.giveTo(q);
  if (quick) return false;
  step.goTo(guess, push);
  const bounds = new Float64Array(model.links.length);
  for (let round = 0; round < rounds; round++) {
    for (const [i, { link, normal }] of linksAt(model, step.q).entries()) {
      const bound = link.friction * normal;
      // Half way from the last bound, once it goes to and fro.
      bounds[i] = round < 6 ? bound : (bound + (bounds[i] as number)) / 2;
      link.bound = bounds[i] as number;
    }
    yield* step.descend();
    for (const link of model.links) link.bound = -1;
    const [at, pushed] = [Float64Array.from(step.q), step.push];
    step.goTo(at, pushed);
    if (yield* step.newton()) return step.giveTo(q);
    step.goTo(at, pushed);
  }
  return false;
}

/** Room for one step, and where it has come to. */
class Step {
  readonly q: Float64Array;
  push = 0;
  private readonly size: number;
  private readonly now: Float64Array;
  private readonly next: Float64Array;
  private readonly way: Float64Array;
  private readonly tried: Float64Array;
  private readonly blocks: BlockSystem;
  private readonly apart: LinksAlong;
  private off = 0;

  constructor(
    private readonly model: Model,
    private readonly from: Float64Array,
    private readonly c: number,
    private readonly border: Bordered | undefined,
  ) {
    const n = model.unknowns;
    this.size = n + (border === undefined ? 0 : 1);
    this.q = new Float64Array(n);
    this.tried = new Float64Array(n);
    this.now = new Float64Array(this.size);
    this.next = new Float64Array(this.size);
    this.way = new Float64Array(this.size);
    this.blocks = blocksOf(model, border);
    this.apart = new LinksAlong(model.links.length);
  }

  goTo(q: Float64Array, push: number): void {
    this.q.set(q);
    this.push = push;
    this.off = this.balance(this.q, push, this.now);
  }

  giveTo(q: Float64Array): true {
    q.set(this.q);
    if (this.border !== undefined) this.border.push = this.push;
    return true;
  }

  /** Newton on the true equations, backtracking on how far they are off. @returns whether they are met. */
  *newton(): Generator<void, boolean> {
    for (let i = 0; i < iterations; i++) {
      if (largest(this.now) <= balanced) return true;
      yield;
      if (!this.direction()) return false;
      // As far as rounding lets it: stiff contacts between bodies that sank far on soft springs.
      if (!this.closer()) return largest(this.now) <= nearlyBalanced;
    }
    return largest(this.now) <= balanced;
  }

  /** Goes a part of the way, as large as brings the equations closer. */
  private closer(): boolean {
    for (let part = 1; part > 1e-3; part /= 2)
      if (this.take(part, (off) => off < this.off * (1 - 1e-4 * part))) return true;
    return false;
  }

  /** Newton down the energy that there is while friction is bounded. Where a push has its distance, first a whole step. */
  *descend(): Generator<void, void> {
    this.goTo(Float64Array.from(this.q), this.push);
    for (let i = 0; i < boundedIterations; i++) {
      if (largest(this.now) <= balanced) return;
      yield;
      if (!this.direction()) return;
      if (i === 0 && this.border !== undefined) {
        this.take(1, () => true);
        continue;
      }
      if (!this.lowest()) return;
    }
  }

  /** Goes along the way to where the energy is about lowest: it is convex, so its slope changes sign once. */
  private lowest(): boolean {
    const { model, q, way, from, c, apart } = this;
    apart.along(model, q, way);
    let [work, moved, square] = [0, 0, 0];
    for (let j = 0; j < model.unknowns; j++) {
      const w = way[j] as number;
      work += (model.load[j] as number) * w;
      moved += ((q[j] as number) - (from[j] as number)) * w;
      square += w * w;
    }
    // Of the energy, a part of the way on.
    const slope = (part: number) => c * (moved + part * square) - work - apart.work(model, part);
    const start = slope(0);
    if (!(start < 0)) return false;
    const atEnd = slope(1);
    if (atEnd <= 0) return this.take(1, () => true);
    // False position: of an end that stays, half the slope is counted (Illinois).
    let [low, atLow, high, atHigh] = [0, start, 1, atEnd];
    let stays = 0;
    for (let i = 0; i < searches && high > 1e-14; i++) {
      const part = low + (high - low) * Math.min(0.95, atLow / (atLow - atHigh));
      const at = slope(part);
      if (at > 0) {
        [high, atHigh] = [part, at];
        if (stays > 0) atLow /= 2;
        stays = 1;
      } else {
        [low, atLow] = [part, at];
        if (stays < 0) atHigh /= 2;
        stays = -1;
      }
      if (Math.abs(at) <= levelEnough * -start) {
        low = part;
        break;
      }
    }
    return this.take(low, () => true);
  }

  private balance(at: Float64Array, push: number, out: Float64Array): number {
    const { model, from, c, border } = this;
    const n = model.unknowns;
    residual(model, at, out);
    let off = 0;
    for (let i = 0; i < n; i++) {
      const moved = (at[i] as number) - (from[i] as number);
      const pushed = border === undefined ? 0 : push * (border.direction[i] as number);
      const v = (out[i] as number) + pushed - c * moved;
      out[i] = v;
      off += v * v;
    }
    if (border !== undefined) {
      const v = model.stiffest * (along(border, at) - border.distance);
      out[n] = v;
      off += v * v;
    }
    return off;
  }

  /** The whole Newton step, left in `way`. @returns whether there is one. */
  private direction(): boolean {
    const { model, size, border, blocks, way, now } = this;
    tangentInto(model, this.q, blocks);
    blocks.damp(this.c);
    if (border !== undefined) blocks.borderWith(border.direction, model.stiffest);
    for (let j = 0; j < size; j++) way[j] = -(now[j] as number);
    return blocks.solve(way) || this.densely();
  }

  /** The same without blocks, with every pivot to choose from. */
  private densely(): boolean {
    const { model, size, border } = this;
    const n = model.unknowns;
    const matrix = new Float64Array(size * size);
    tangent(model, this.q, matrix, size);
    for (let j = 0; j < n; j++) matrix[j * size + j] = (matrix[j * size + j] as number) - this.c;
    if (border !== undefined)
      for (let j = 0; j < n; j++) {
        matrix[j * size + n] = border.direction[j] as number;
        matrix[n * size + j] = model.stiffest * (border.direction[j] as number);
      }
    for (let j = 0; j < size; j++) this.way[j] = -(this.now[j] as number);
    return solveDense(matrix, this.way, size);
  }

  /** Goes a part of the way, if that is good enough. */
  private take(part: number, isGood: (off: number) => boolean): boolean {
    const n = this.model.unknowns;
    for (let j = 0; j < n; j++) this.tried[j] = (this.q[j] as number) + part * (this.way[j] as number);
    const push = this.push + part * (this.way[n] ?? 0);
    const off = this.balance(this.tried, push, this.next);
    if (!isGood(off) && !(largest(this.next) <= balanced)) return false;
    this.q.set(this.tried);
    this.now.set(this.next);
    this.push = push;
    this.off = off;
    return true;
  }
}

const systems = new WeakMap<Model, Map<number, BlockSystem>>();

/** The blocks of a model, which are the same for every step. */
function blocksOf(model: Model, border: Bordered | undefined): BlockSystem {
  const pushed = border === undefined ? undefined : firstOf(model, border.direction);
  const known = systems.get(model) ?? new Map<number, BlockSystem>();
  systems.set(model, known);
  const before = known.get(pushed ?? -1);
  if (before !== undefined) return before;
  const made = new BlockSystem(model, pushed);
  known.set(pushed ?? -1, made);
  return made;
}

/** First unknown of the member that a push acts on. */
const firstOf = (model: Model, direction: Float64Array): number | undefined => {
  const at = direction.findIndex((d) => d !== 0);
  return model.members.findLast((m) => m.first <= at)?.first;
};

/** How far the pushed point is along the push. */
export function along(border: Bordered, q: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < border.direction.length; i++) sum += (border.direction[i] as number) * (q[i] as number);
  return sum;
}

export const largest = (of: Float64Array): number => {
  let most = 0;
  for (let i = 0; i < of.length; i++) {
    const v = Math.abs(of[i] as number);
    if (!(v <= most)) most = v;
  }
  return most;
};

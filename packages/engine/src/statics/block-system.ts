import { solveDense } from './lu.js';
import type { Model } from './model.js';

/**
 * The equations of one Newton step, kept in blocks of members that act on one another. A crib acts on the ground and
 * on a vehicle or two, a base on a vehicle and a few bases: these are eliminated first, each within its own block, and
 * a few vehicles are left, which are solved densely. The work grows with the number of cribs, not with its cube.
 */
export class BlockSystem {
  /** All blocks, row by row. */
  readonly store: Float64Array;
  /** For each link: where its blocks aa, ab, ba, bb begin, or -1. */
  readonly at: Int32Array;
  /** Numbers from one row to the next of these blocks. */
  readonly stride: Int32Array;
  private readonly diagonals: Int32Array;
  private readonly steps: readonly Step[];
  private readonly tail: Int32Array;
  /** The part of the store that is the tail. */
  private readonly square: Float64Array;
  private readonly tailSize: number;
  private readonly bordered: boolean;
  private readonly right: Float64Array;
  private readonly pivots = new Int32Array(6);

  /** @param pushed the first unknown of a body whose push is unknown too: it stays to the end. */
  constructor(model: Model, pushed: number | undefined) {
    const { members, links } = model;
    const rowOf = new Map(members.map((m, i) => [m.first, i]));
    const size = members.map((m) => (m.kind === 'body' ? 6 : 3));
    const near = members.map(() => new Set<number>());
    for (const { a, b } of links) {
      if (a.first < 0 || b.first < 0 || a.first === b.first) continue;
      const [i, j] = [rowOf.get(a.first) as number, rowOf.get(b.first) as number];
      near[i]?.add(j);
      near[j]?.add(i);
    }
    // The member that touches fewest goes first; what it touched is then taken to touch each other.
    const left = new Set(members.keys());
    const order: { readonly member: number; readonly with: readonly number[] }[] = [];
    for (;;) {
      let least = -1;
      for (const i of left)
        if (members[i]?.first !== pushed && (near[i]?.size ?? 0) < (near[least]?.size ?? mostTouched + 1))
          least = i;
      if (least < 0) break;
      const others = [...(near[least] as Set<number>)];
      order.push({ member: least, with: others });
      left.delete(least);
      for (const i of others) {
        near[i]?.delete(least);
        for (const j of others) if (i !== j) near[i]?.add(j);
      }
    }
    const tail = [...left];
    const tailAt = new Map<number, number>();
    let tailSize = 0;
    for (const i of tail) {
      tailAt.set(i, tailSize);
      tailSize += size[i] as number;
    }
    this.bordered = pushed !== undefined;
    if (this.bordered) tailSize++;
    // Places of blocks: the tail as one square, then of each eliminated member its own and those beside it.
    let used = tailSize * tailSize;
    const place = new Map<number, readonly [number, number]>();
    const key = (i: number, j: number) => i * members.length + j;
    for (const [i, r] of tailAt)
      for (const [j, c] of tailAt) place.set(key(i, j), [r * tailSize + c, tailSize]);
    for (const { member, with: others } of order) {
      const s = size[member] as number;
      const put = (i: number, j: number, columns: number, rows: number) => {
        place.set(key(i, j), [used, columns]);
        used += columns * rows;
      };
      put(member, member, s, s);
      for (const other of others) {
        put(member, other, size[other] as number, s);
        put(other, member, s, size[other] as number);
      }
    }
    const placeOf = (i: number, j: number) => place.get(key(i, j)) as readonly [number, number];
    this.steps = order.map(({ member, with: others }) => ({
      first: members[member]?.first as number,
      size: size[member] as number,
      own: placeOf(member, member)[0],
      others: others.map((other) => ({
        first: members[other]?.first as number,
        size: size[other] as number,
        right: placeOf(member, other)[0],
        below: placeOf(other, member)[0],
      })),
      targets: others.flatMap((i) => others.map((j) => placeOf(i, j))),
    }));
    this.store = new Float64Array(used);
    this.square = this.store.subarray(0, tailSize * tailSize);
    this.tailSize = tailSize;
    this.tail = Int32Array.from(
      tail.flatMap((i) =>
        Array.from({ length: size[i] as number }, (_, k) => (members[i]?.first as number) + k),
      ),
    );
    this.right = new Float64Array(tailSize);
    this.at = new Int32Array(4 * links.length).fill(-1);
    this.stride = new Int32Array(4 * links.length);
    for (const [l, { a, b }] of links.entries()) {
      const ends = [a, b].map(({ first }) => (first < 0 ? -1 : (rowOf.get(first) as number)));
      for (let e = 0; e < 4; e++) {
        const [i, j] = [ends[e >> 1] as number, ends[e & 1] as number];
        if (i < 0 || j < 0) continue;
        const [at, stride] = placeOf(i, j);
        this.at[4 * l + e] = at;
        this.stride[4 * l + e] = stride;
      }
    }
    // Of every unknown, the place of its diagonal.
    this.diagonals = new Int32Array(model.unknowns);
    for (const [i, m] of members.entries()) {
      const [at, stride] = placeOf(i, i);
      for (let k = 0; k < (size[i] as number); k++) this.diagonals[m.first + k] = at + k * stride + k;
    }
  }

  /** Takes c from every diagonal. */
  damp(c: number): void {
    for (const at of this.diagonals) this.store[at] = (this.store[at] as number) - c;
  }

  /** Puts the row and the column of a push in. Only the pushed body, which is in the tail, feels it. */
  borderWith(direction: Float64Array, scale: number): void {
    const n = this.tailSize;
    const last = n - 1;
    for (let k = 0; k < last; k++) {
      const d = direction[this.tail[k] as number] as number;
      this.store[k * n + last] = d;
      this.store[last * n + k] = scale * d;
    }
  }

  /**
   * Solves for x, in place.
   *
   * @param x the right side, and then the answer; with a push its last number belongs to it.
   * @returns false where a block has no pivot: then x holds nothing of use.
   */
  solve(x: Float64Array): boolean {
    const { store, steps, tail, right, tailSize } = this;
    for (const step of steps) if (!this.eliminate(step, x)) return false;
    for (let k = 0; k < tail.length; k++) right[k] = x[tail[k] as number] as number;
    if (this.bordered) right[tailSize - 1] = x[x.length - 1] as number;
    if (!solveDense(this.square, right, tailSize)) return false;
    for (let k = 0; k < tail.length; k++) x[tail[k] as number] = right[k] as number;
    if (this.bordered) x[x.length - 1] = right[tailSize - 1] as number;
    for (let s = steps.length - 1; s >= 0; s--) {
      const { first, size, others } = steps[s] as Step;
      for (const o of others)
        for (let i = 0; i < size; i++) {
          let sum = x[first + i] as number;
          for (let j = 0; j < o.size; j++)
            sum -= (store[o.right + i * o.size + j] as number) * (x[o.first + j] as number);
          x[first + i] = sum;
        }
    }
    return true;
  }

  /** Own block to the unit: what is beside it, and the right side, are multiplied by its inverse. */
  private eliminate({ first, size, own, others, targets }: Step, x: Float64Array): boolean {
    const { store, pivots } = this;
    let largest = 0;
    for (let i = 0; i < size * size; i++) largest = Math.max(largest, Math.abs(store[own + i] as number));
    if (!(largest > 0) || !Number.isFinite(largest)) return false;
    for (let k = 0; k < size; k++) {
      let p = k;
      let most = Math.abs(store[own + k * size + k] as number);
      for (let i = k + 1; i < size; i++) {
        const v = Math.abs(store[own + i * size + k] as number);
        if (v > most) {
          most = v;
          p = i;
        }
      }
      if (!(most > tooSmall * largest)) return false;
      pivots[k] = p;
      if (p !== k)
        for (let j = 0; j < size; j++) {
          const v = store[own + k * size + j] as number;
          store[own + k * size + j] = store[own + p * size + j] as number;
          store[own + p * size + j] = v;
        }
      const pivot = store[own + k * size + k] as number;
      for (let i = k + 1; i < size; i++) {
        const factor = (store[own + i * size + k] as number) / pivot;
        store[own + i * size + k] = factor;
        if (factor === 0) continue;
        for (let j = k + 1; j < size; j++)
          store[own + i * size + j] =
            (store[own + i * size + j] as number) - factor * (store[own + k * size + j] as number);
      }
    }
    for (const o of others) this.divide(own, size, store, o.right, o.size);
    this.divide(own, size, x, first, 1);
    let t = 0;
    for (const i of others) {
      for (const j of others) {
        const [target, stride] = targets[t++] as readonly [number, number];
        for (let r = 0; r < i.size; r++)
          for (let k = 0; k < size; k++) {
            const v = store[i.below + r * size + k] as number;
            if (v === 0) continue;
            const from = j.right + k * j.size;
            const to = target + r * stride;
            for (let c = 0; c < j.size; c++)
              store[to + c] = (store[to + c] as number) - v * (store[from + c] as number);
          }
      }
      for (let r = 0; r < i.size; r++) {
        let sum = x[i.first + r] as number;
        for (let k = 0; k < size; k++)
          sum -= (store[i.below + r * size + k] as number) * (x[first + k] as number);
        x[i.first + r] = sum;
      }
    }
    return true;
  }

  /** What stands at `at`, rows by columns, is multiplied by the inverse of the block just factored. */
  private divide(own: number, size: number, of: Float64Array, at: number, columns: number): void {
    const { store, pivots } = this;
    for (let c = 0; c < columns; c++) {
      for (let k = 0; k < size; k++) {
        const p = pivots[k] as number;
        if (p === k) continue;
        const v = of[at + k * columns + c] as number;
        of[at + k * columns + c] = of[at + p * columns + c] as number;
        of[at + p * columns + c] = v;
      }
      for (let i = 1; i < size; i++) {
        let sum = of[at + i * columns + c] as number;
        for (let k = 0; k < i; k++)
          sum -= (store[own + i * size + k] as number) * (of[at + k * columns + c] as number);
        of[at + i * columns + c] = sum;
      }
      for (let i = size - 1; i >= 0; i--) {
        let sum = of[at + i * columns + c] as number;
        for (let k = i + 1; k < size; k++)
          sum -= (store[own + i * size + k] as number) * (of[at + k * columns + c] as number);
        of[at + i * columns + c] = sum / (store[own + i * size + i] as number);
      }
    }
  }
}

interface Step {
  readonly first: number;
  readonly size: number;
  readonly own: number;
  readonly others: readonly {
    readonly first: number;
    readonly size: number;
    /** Beside the own block, in its rows. */
    readonly right: number;
    /** Below it, in its columns. */
    readonly below: number;
  }[];
  /** Blocks of each pair of the others. */
  readonly targets: readonly (readonly [number, number])[];
}

/** A member that touches more is left to the end. */
const mostTouched = 3;
/** A pivot that is smaller than this share of its block is lost in rounding. */
const tooSmall = 1e-14;

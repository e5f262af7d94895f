import { relativeMove } from './link-law.js';
import { addForce, type Link, type Model, modelOf, vectorAt } from './model.js';
import { largest } from './newton.js';
import type { Scene, Vector } from './scene.js';
import type { State } from './state.js';
import { dot, minus, plus, size, times } from './vector.js';

/**
 * A small motion along which the loads do work, and against which no support can do any, whatever force it gives. It
 * exists exactly where no forces hold the scene (Farkas). Bodies in the order of the scene; the largest number is 1.
 */
export interface Motion {
  readonly members: readonly { readonly id: string; readonly moved: Vector; readonly turned: Vector }[];
  /** Work of the loads along it, as a share of the total load times the extent of the scene: above zero. */
  readonly work: number;
}

const rounds = 600;
/** Closing over work: forces that held it all the same would be ten thousand times the whole load. */
const tight = 1e-4;

/**
 * Looks for the proof that a scene must fall, ratings left aside. It finds the forces of all elements, inside their
 * cones, that come nearest to the load; what they leave over is the motion, if it stands the check.
 *
 * @returns `undefined` where there is none: that may mean that forces exist that would hold it.
 */
export function* proofOfFalling(scene: Scene, state: State): Generator<void, Motion | undefined> {
  const model = modelOf(scene, state);
  const left = yield* nearest(model);
  const most = largest(left);
  if (!(most > 1e-9)) return undefined;
  const motion = left.map((v) => v / most);
  const work = workOf(model, motion);
  if (!(work > 1e-6) || closingOf(model, motion) > tight * work) return undefined;
  return {
    members: model.members.map((m) => ({
      id: m.id,
      moved: times(vectorAt(motion, m.first), model.length),
      turned: m.kind === 'body' ? vectorAt(motion, m.first + 3) : { x: 0, y: 0, z: 0 },
    })),
    work,
  };
}

/** What is left of the load when the elements carry as much of it as they can: load + sum of their forces. */
function* nearest(model: Model): Generator<void, Float64Array> {
  const n = model.unknowns;
  const columns: Float64Array[] = [];
  const orthogonal = new Orthogonal(model.load, n);
  let weights: number[] = [];
  const left = Float64Array.from(model.load);
  for (let round = 0; round < rounds; round++) {
    yield;
    const added = mostHelpful(model, left);
    if (added === undefined) break;
    // Alike to rounding with those in use.
    if (!orthogonal.add(added)) return left;
    columns.push(added);
    weights.push(0);
    // Least squares over the columns in use; a column that would pull is let go (Lawson and Hanson).
    for (;;) {
      const wanted = orthogonal.weights();
      if (wanted.every((w) => w > 0)) {
        weights = wanted;
        break;
      }
      let part = 1;
      for (const [i, w] of wanted.entries()) {
        const old = weights[i] ?? 0;
        if (w <= 0) part = Math.min(part, old / (old - w));
      }
      weights = weights.map((old, i) => old + part * ((wanted[i] ?? 0) - old));
      const gone = weights.findIndex((w) => w <= 1e-14);
      for (let i = columns.length - 1; i >= 0; i--) {
        if ((weights[i] ?? 0) > 1e-14) continue;
        columns.splice(i, 1);
        weights.splice(i, 1);
      }
      orthogonal.keep(Math.max(0, gone));
      if (!columns.slice(Math.max(0, gone)).every((column) => orthogonal.add(column))) return left;
      if (columns.length === 0) break;
    }
    left.set(model.load);
    for (const [i, column] of columns.entries())
      for (let j = 0; j < n; j++)
        left[j] = (left[j] as number) + (weights[i] as number) * (column[j] as number);
  }
  return left;
}

/** The force of an element, at the best direction inside its cone, that takes off most of what is left. */
function mostHelpful(model: Model, left: Float64Array): Float64Array | undefined {
  const scale = Math.sqrt(left.reduce((sum, v) => sum + v * v, 0));
  let best: { readonly link: Link; readonly force: Vector } | undefined;
  let most = 1e-11 * scale;
  for (const link of model.links) {
    const force = strongestAgainst(link, relativeMove(left, link));
    const gain = -dot(force, relativeMove(left, link)) / size(force);
    if (gain > most) {
      most = gain;
      best = { link, force };
    }
  }
  if (best === undefined) return undefined;
  const column = new Float64Array(model.unknowns);
  addForce(column, best.link.a, best.force);
  addForce(column, best.link.b, times(best.force, -1));
  return column;
}

/** Of all forces of a link with 1 along its axis, the one that does most work against a relative motion. */
function strongestAgainst(link: Link, v: Vector): Vector {
  if (link.friction === 0) return link.axis;
  let t = minus(v, times(link.axis, dot(v, link.axis)));
  const { rolling } = link;
  if (rolling !== undefined) {
    const along = dot(t, rolling.along);
    const held = along > 0 ? rolling.forward : rolling.back;
    if (!held) t = minus(t, times(rolling.along, along));
  }
  const speed = size(t);
  return speed === 0 ? link.axis : plus(link.axis, times(t, -link.friction / speed));
}

/** How fast the most closing link closes along a motion, friction counted: at most zero for a proof. */
function closingOf(model: Model, motion: Float64Array): number {
  return model.links.reduce((most, link) => {
    const v = relativeMove(motion, link);
    return Math.max(most, -dot(strongestAgainst(link, v), v));
  }, 0);
}

function workOf(model: Model, motion: Float64Array): number {
  return model.load.reduce((sum, f, i) => sum + f * (motion[i] as number), 0);
}

/**
 * Weights w, of any sign, with load + sum of w_i column_i as small as can be, by orthogonalization (done twice, so that
 * columns that are nearly alike stay apart). Columns are added one by one, and what was done for the first stays.
 */
class Orthogonal {
  private readonly basis: Float64Array[] = [];
  /** Of each column its parts along the basis, and then its length beside it. */
  private readonly parts: Float64Array[] = [];

  constructor(
    private readonly load: Float64Array,
    private readonly n: number,
  ) {}

  /** @returns false, and nothing is added, where it is alike to rounding with the others. */
  add(column: Float64Array): boolean {
    const { basis, n } = this;
    const v = Float64Array.from(column);
    const parts = new Float64Array(basis.length + 1);
    const before = norm(v);
    for (let pass = 0; pass < 2; pass++)
      for (const [i, e] of basis.entries()) {
        const part = product(e, v, n);
        parts[i] = (parts[i] as number) + part;
        for (let r = 0; r < n; r++) v[r] = (v[r] as number) - part * (e[r] as number);
      }
    const after = norm(v);
    if (!(after > 1e-11 * before)) return false;
    parts[basis.length] = after;
    basis.push(v.map((x) => x / after));
    this.parts.push(parts);
    return true;
  }

  /** Forgets all but the first columns. */
  keep(first: number): void {
    this.basis.length = first;
    this.parts.length = first;
  }

  weights(): number[] {
    const { basis, parts, load, n } = this;
    const weights = basis.map((e) => -product(e, load, n));
    for (let i = basis.length - 1; i >= 0; i--) {
      let sum = weights[i] as number;
      for (let j = i + 1; j < basis.length; j++)
        sum -= ((parts[j] as Float64Array)[i] as number) * (weights[j] as number);
      weights[i] = sum / ((parts[i] as Float64Array)[i] as number);
    }
    return weights;
  }
}

function product(a: Float64Array, b: Float64Array, n: number): number {
  let sum = 0;
  for (let r = 0; r < n; r++) sum += (a[r] as number) * (b[r] as number);
  return sum;
}

const norm = (v: Float64Array): number => Math.sqrt(product(v, v, v.length));

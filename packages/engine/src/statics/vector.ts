import type { Vector } from './scene.js';

export const vector = (x: number, y: number, z: number): Vector => ({ x, y, z });
export const origin: Vector = vector(0, 0, 0);
export const plus = (a: Vector, b: Vector): Vector => vector(a.x + b.x, a.y + b.y, a.z + b.z);
export const minus = (a: Vector, b: Vector): Vector => vector(a.x - b.x, a.y - b.y, a.z - b.z);
export const times = (a: Vector, k: number): Vector => vector(a.x * k, a.y * k, a.z * k);
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const cross = (a: Vector, b: Vector): Vector =>
  vector(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
export const size = (a: Vector): number => Math.hypot(a.x, a.y, a.z);
/** Length 1; a vector of no length stays as it is. */
export const unit = (a: Vector): Vector => times(a, 1 / (size(a) || 1));

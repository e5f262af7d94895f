import { type Box, overlaps } from '../scene/bounds.js';

const cell = 12;

/** Boxes filed by where they lie, so that a question about one place looks at its neighbours alone. */
export class BoxIndex {
  private readonly cells = new Map<number, Box[]>();

  constructor(boxes: readonly Box[] = []) {
    for (const box of boxes) this.add(box);
  }

  add(box: Box): void {
    const [right, bottom] = [at(box.right), at(box.bottom)];
    for (let x = at(box.left); x <= right; x++) {
      for (let y = at(box.top); y <= bottom; y++) {
        const own = this.cells.get(key(x, y));
        if (own === undefined) this.cells.set(key(x, y), [box]);
        else own.push(box);
      }
    }
  }

  /** The boxes that overlap this one, or lie nearer to it than `gap`; each once. */
  touching(box: Box, gap = 0): readonly Box[] {
    const found: Box[] = [];
    this.near(box, gap, (other) => {
      if (!found.includes(other)) found.push(other);
      return false;
    });
    return found;
  }

  touches(box: Box, gap = 0): boolean {
    return this.near(box, gap, () => true);
  }

  /** Hands over what touches a box, some of it more than once, until `enough` says so. */
  private near(box: Box, gap: number, enough: (other: Box) => boolean): boolean {
    const [right, bottom] = [at(box.right + gap), at(box.bottom + gap)];
    const top = at(box.top - gap);
    for (let x = at(box.left - gap); x <= right; x++) {
      for (let y = top; y <= bottom; y++) {
        const own = this.cells.get(key(x, y));
        if (own === undefined) continue;
        for (const other of own) if (overlaps(other, box, gap) && enough(other)) return true;
      }
    }
    return false;
  }
}

const most = 1000;

const key = (x: number, y: number): number => x * 4 * most + y;

const at = (mm: number): number => Math.max(-most, Math.min(most, Math.floor(mm / cell)));

import { type Box, overlaps } from '../scene/bounds.js';

const cell = 12;

/** Boxes filed by where they lie, so that a question about one place looks at its neighbours alone. */
export class BoxIndex {
  private readonly cells = new Map<number, Box[]>();

  constructor(boxes: readonly Box[] = []) {
    for (const box of boxes) this.add(box);
  }

  add(box: Box): void {
    for (const key of keys(box)) {
      const own = this.cells.get(key);
      if (own === undefined) this.cells.set(key, [box]);
      else own.push(box);
    }
  }

  /** The boxes that overlap this one, or lie nearer to it than `gap`; each once. */
  touching(box: Box, gap = 0): readonly Box[] {
    const wide = {
      left: box.left - gap,
      top: box.top - gap,
      right: box.right + gap,
      bottom: box.bottom + gap,
    };
    const found = new Set<Box>();
    for (const key of keys(wide)) {
      for (const other of this.cells.get(key) ?? []) if (overlaps(other, box, gap)) found.add(other);
    }
    return [...found];
  }

  touches(box: Box, gap = 0): boolean {
    const wide = {
      left: box.left - gap,
      top: box.top - gap,
      right: box.right + gap,
      bottom: box.bottom + gap,
    };
    for (const key of keys(wide)) {
      for (const other of this.cells.get(key) ?? []) if (overlaps(other, box, gap)) return true;
    }
    return false;
  }
}

const most = 1000;

function* keys(box: Box): Generator<number> {
  for (let x = at(box.left); x <= at(box.right); x++)
    for (let y = at(box.top); y <= at(box.bottom); y++) yield x * 4 * most + y;
}

const at = (mm: number): number => Math.max(-most, Math.min(most, Math.floor(mm / cell)));

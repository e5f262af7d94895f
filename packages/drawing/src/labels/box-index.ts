import { type Box, overlaps } from '../scene/bounds.js';

/** A cell's side, mm. */
const cell = 12;

/** Cells along a side of the field; what lies outside it is filed in the cells at its edge. */
const most = 64;

/** Cells left of the sheet and above it. */
const before = 8;

interface Filed {
  readonly box: Box;
  /** The last question that met it: a box stands in several cells and is handed over once. */
  met: number;
}

/** Boxes filed by where they lie, so that a question about one place looks at its neighbors alone. */
export class BoxIndex {
  private readonly cells: (Filed[] | undefined)[] = new Array(most * most);
  private questions = 0;

  constructor(boxes: readonly Box[] = []) {
    for (const box of boxes) this.add(box);
  }

  add(box: Box): void {
    const filed = { box, met: 0 };
    const [right, bottom] = [at(box.right), at(box.bottom)];
    for (let x = at(box.left); x <= right; x++) {
      for (let y = at(box.top); y <= bottom; y++) {
        const own = this.cells[x * most + y];
        if (own === undefined) this.cells[x * most + y] = [filed];
        else own.push(filed);
      }
    }
  }

  /** The boxes that overlap this one, or lie nearer to it than `gap`; each once. */
  touching(box: Box, gap = 0): readonly Box[] {
    let found: Box[] | undefined;
    const question = ++this.questions;
    const [right, bottom, top] = [at(box.right + gap), at(box.bottom + gap), at(box.top - gap)];
    for (let x = at(box.left - gap); x <= right; x++) {
      for (let y = top; y <= bottom; y++) {
        const own = this.cells[x * most + y];
        if (own === undefined) continue;
        for (const filed of own) {
          if (filed.met === question || !overlaps(filed.box, box, gap)) continue;
          filed.met = question;
          if (found === undefined) found = [filed.box];
          else found.push(filed.box);
        }
      }
    }
    return found ?? none;
  }

  touches(box: Box, gap = 0): boolean {
    const [right, bottom, top] = [at(box.right + gap), at(box.bottom + gap), at(box.top - gap)];
    for (let x = at(box.left - gap); x <= right; x++) {
      for (let y = top; y <= bottom; y++) {
        const own = this.cells[x * most + y];
        if (own === undefined) continue;
        for (const filed of own) if (overlaps(filed.box, box, gap)) return true;
      }
    }
    return false;
  }
}

const none: readonly Box[] = [];

const at = (mm: number): number => {
  const index = Math.floor(mm / cell) + before;
  return index < 0 ? 0 : index >= most ? most - 1 : index;
};

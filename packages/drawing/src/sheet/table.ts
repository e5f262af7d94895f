import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { clip } from '../text/wrap.js';
import { leading, type } from './sizes.js';

export interface Column {
  readonly title: string;
  readonly width: number;
  readonly align?: 'start' | 'end';
}

export interface Row {
  readonly key: string;
  readonly cells: readonly string[];
  readonly strong?: boolean;
}

const size = type.dimension;
export const rowHeight = size * leading + 1.2;

/** A ruled table. Words that do not fit their column are shortened with dots. */
export function table(
  key: string,
  columns: readonly Column[],
  rows: readonly Row[],
  left: number,
  top: number,
): { readonly item: Item; readonly bottom: number; readonly rowAt: (index: number) => number } {
  const starts = columns.map((_, i) => columns.slice(0, i).reduce((sum, c) => sum + c.width, left));
  const width = columns.reduce((sum, c) => sum + c.width, 0);
  const put = (row: number, cells: readonly string[], strong: boolean) =>
    cells.map((words, i) => {
      const column = columns[i] ?? { title: '', width: 10 };
      const end = column.align === 'end';
      const weight = strong ? 'bold' : 'normal';
      return text(
        `cell ${row} ${i}`,
        at((starts[i] ?? left) + (end ? column.width - 2 : 0), top + row * rowHeight + size),
        clip(words, column.width - 2, size, weight),
        size,
        { anchor: end ? 'end' : 'start', weight },
      );
    });
  const rule = top + size + 1.4;
  const items = [
    ...put(
      0,
      columns.map((c) => c.title),
      true,
    ),
    line('rule', 'scale', at(left, rule), at(left + width, rule)),
    ...rows.flatMap((row, i) => put(i + 1, row.cells, row.strong === true)),
  ];
  return {
    item: group(key, items),
    bottom: top + (rows.length + 1) * rowHeight,
    rowAt: (index) => top + (index + 1) * rowHeight,
  };
}

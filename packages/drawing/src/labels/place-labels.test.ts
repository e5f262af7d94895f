import fc from 'fast-check';
import { expect, it } from 'vitest';
import { overlaps, textBox, within } from '../scene/bounds.js';
import type { Item } from '../scene/scene.js';
import { walk } from '../scene/walk.js';
import type { Label } from './label.js';
import { placeLabels } from './place-labels.js';

const around = {
  area: { left: 0, top: 0, right: 200, bottom: 140 },
  taken: [],
  shapes: [],
  lines: [],
  bodies: [],
  bodyCost: 10,
};

const label = (key: string, x: number, y: number): Label => ({
  key,
  at: { x, y },
  clear: { x: 3, y: 3 },
  name: key,
  beside: '38.5 in',
  lines: ['1,365 lb, 5.7 %'],
});

const boxes = (items: readonly Item[]) =>
  items.map((item) => [...walk([item])].flatMap((i) => (i.kind === 'text' ? [textBox(i)] : [])));

it('puts a lone label just above what it names', () => {
  const { items, unplaced } = placeLabels([label('A', 100, 70)], around);
  expect(unplaced).toEqual([]);
  for (const box of boxes(items).flat()) {
    expect(box.bottom).toBeLessThan(67);
    expect(box.top).toBeGreaterThan(50);
  }
  expect([...walk(items)].some((i) => i.kind === 'line')).toBe(false);
});

it('goes elsewhere, with a leader, where a shape or words are in the way', () => {
  const blocked = { left: 70, top: 50, right: 130, bottom: 90 };
  const { items } = placeLabels([label('A', 100, 70)], { ...around, taken: [blocked] });
  for (const box of boxes(items).flat()) expect(overlaps(box, blocked)).toBe(false);
  expect([...walk(items)].some((i) => i.kind === 'line')).toBe(true);
});

it('never lets labels overlap or leave the sheet; one without room is handed back', () => {
  const spots = fc.array(fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 140 })), {
    minLength: 1,
    maxLength: 40,
  });
  fc.assert(
    fc.property(spots, (list) => {
      const labels = list.map(([x, y], i) => label(`N${i}`, x, y));
      const { items, unplaced } = placeLabels(labels, around);
      const first = items.findIndex((i) => i.key.startsWith('label '));
      // A leader drawn later would strike out the words that it runs over.
      expect(items.slice(first).some((i) => i.key.startsWith('leader '))).toBe(false);
      const own = boxes(items.filter((i) => i.key.startsWith('label ')));
      expect(own.length + unplaced.length).toBe(labels.length);
      own.forEach((mine, i) => {
        for (const box of mine) {
          expect(within(box, around.area, 0.01)).toBe(true);
          for (const theirs of own.slice(i + 1))
            for (const other of theirs) expect(overlaps(box, other)).toBe(false);
        }
      });
    }),
    { numRuns: 30 },
  );
});

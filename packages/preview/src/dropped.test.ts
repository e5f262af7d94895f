import type { Drag, Frame } from '@cribwright/drawing/page';
import { describe, expect, it } from 'vitest';
import { dropped } from './dropped.js';

// A plan at 10 mm for 1 m: x to the right, y up the sheet.
const frame: Frame = {
  across: { axis: 'x', origin: 20, scale: 10 },
  down: { axis: 'y', origin: 100, scale: -10 },
};
const drag: Drag = {
  element: 'crib/A',
  moves: 'center',
  axes: ['x', 'y'],
  snaps: { x: [5, 6], y: [-1.2, 1.2] },
  from: { x: 5, y: -1 },
  grid: 0.05,
};

describe('where a dragged shape comes to lie', () => {
  it('is on the joist or rail that is near enough', () => {
    expect(dropped(drag, frame, { x: 9.2, y: 0 }, 1.5)).toMatchObject({ to: { x: 6 }, snapped: ['x'] });
    expect(dropped(drag, frame, { x: 0, y: 1.9 }, 1.5)).toMatchObject({ to: { y: -1.2 }, snapped: ['y'] });
  });
  it('is on the grid where nothing attracts it', () => {
    const { to, snapped, shift } = dropped(drag, frame, { x: 5.2, y: 0 }, 1.5);
    expect(to.x).toBeCloseTo(5.5, 9);
    expect(snapped).toEqual([]);
    expect(shift.x).toBeCloseTo(5, 9);
  });
  it('leaves an axis as it was along which the hand only trembled', () => {
    expect(dropped(drag, frame, { x: 10, y: 0.3 }, 1.5).to).toEqual({ x: 6 });
  });
  it('is the same place for a drag that comes back', () => {
    expect(dropped(drag, frame, { x: 0.1, y: 0.1 }, 1.5)).toEqual({
      to: {},
      shift: { x: 0, y: 0 },
      snapped: [],
    });
  });
  it('does not move along an axis that the view does not show, or that is not free', () => {
    const side: Frame = { ...frame, down: { axis: 'z', origin: 100, scale: -10 } };
    expect(dropped(drag, side, { x: 10, y: 20 }, 1.5).to).toEqual({ x: 6 });
    expect(dropped({ ...drag, axes: ['y'] }, frame, { x: 10, y: 0 }, 1.5).to).toEqual({});
  });
});

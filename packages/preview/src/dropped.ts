import type { Drag, Frame } from '@cribwright/drawing/page';

export type Axis = 'x' | 'y' | 'z';
export type DropPlace = Readonly<Partial<Record<Axis, number>>>;

export interface Dropped {
  /** New place in the plan, only along the axes that moved, m. */
  readonly to: DropPlace;
  /** How far the shape is shown moved on the sheet, mm. */
  readonly shift: { readonly x: number; readonly y: number };
  /** The axes along which it snapped to a joist or rail. */
  readonly snapped: readonly Axis[];
}

/**
 * Where a shape comes to lie that was dragged by so much on the sheet: snapped to what attracts it, else rounded
 * to the grid. A direction that the view does not show, or along which it may not move, stays as it was.
 *
 * @param reach how near a snap must be to attract, mm on the sheet
 */
export function dropped(
  drag: Drag,
  frame: Frame,
  by: { readonly x: number; readonly y: number },
  reach: number,
): Dropped {
  const across = along(drag, frame.across, by.x, reach);
  const down = along(drag, frame.down, by.y, reach);
  return {
    to: { ...across.to, ...down.to },
    shift: { x: across.shift, y: down.shift },
    snapped: [...across.snapped, ...down.snapped],
  };
}

function along(
  drag: Drag,
  { axis, scale }: Frame['across'],
  by: number,
  reach: number,
): { readonly to: DropPlace; readonly shift: number; readonly snapped: readonly Axis[] } {
  const from = drag.from?.[axis];
  // A hand is not quite steady: a drag along one axis leaves the other as it was.
  if (from === undefined || !drag.axes.includes(axis) || Math.abs(by) < reach / 3)
    return { to: {}, shift: 0, snapped: [] };
  const wished = from + by / scale;
  const near = Math.abs(reach / scale);
  const snap = (drag.snaps[axis] ?? [])
    .filter((s) => Math.abs(s - wished) <= near)
    .sort((a, b) => Math.abs(a - wished) - Math.abs(b - wished))[0];
  const grid = drag.grid ?? 0.01;
  const value = snap ?? Math.round(wished / grid) * grid;
  if (Math.abs(value - from) < grid / 100) return { to: {}, shift: 0, snapped: [] };
  return { to: { [axis]: value }, shift: (value - from) * scale, snapped: snap === undefined ? [] : [axis] };
}

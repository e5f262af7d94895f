export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Arrow keys, as directions on the screen. */
export const directions: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/**
 * The index of the shape that an arrow key goes to: the nearest one in that direction, where being off to the side
 * counts double. Where none lies that way, the next or the one before in order, so that every shape can be reached.
 */
export function nextShape(spots: readonly Spot[], from: number, way: Spot): number {
  const here = spots[from];
  if (here === undefined) return 0;
  let best: { index: number; cost: number } | undefined;
  spots.forEach((spot, index) => {
    if (index === from) return;
    const [dx, dy] = [spot.x - here.x, spot.y - here.y];
    const ahead = dx * way.x + dy * way.y;
    const aside = Math.abs(dx * way.y) + Math.abs(dy * way.x);
    if (ahead <= 0.5 || aside > ahead * 2) return;
    const cost = ahead + 2 * aside;
    if (best === undefined || cost < best.cost) best = { index, cost };
  });
  if (best !== undefined) return best.index;
  const step = way.x + way.y > 0 ? 1 : -1;
  return (from + step + spots.length) % spots.length;
}

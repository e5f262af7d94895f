/** A label along a line: where it would like to have its middle, and how much room it takes. */
export interface Wish {
  readonly at: number;
  readonly room: number;
}

/**
 * Moves labels apart along a line, as little as possible, keeping their order: none overlap and all stay between
 * `low` and `high`. `undefined` where there is not room enough.
 *
 * Neighbors that press on each other are pooled and stand about the mean of what they wish (least squares).
 */
export function spread(wishes: readonly Wish[], low: number, high: number): readonly number[] | undefined {
  const total = wishes.reduce((sum, w) => sum + w.room, 0);
  if (total > high - low + 1e-9) return undefined;
  const order = wishes.map((_, i) => i).sort((a, b) => (wishes[a]?.at ?? 0) - (wishes[b]?.at ?? 0) || a - b);
  let before = 0;
  const pools: { start: number; room: number; first: number; count: number }[] = [];
  order.forEach((index, place) => {
    const wish = wishes[index] ?? { at: 0, room: 0 };
    // A pool's start if all its labels sit where they wish, on average.
    let pool = { start: wish.at - wish.room / 2, room: wish.room, first: place, count: 1 };
    for (
      let last = pools.at(-1);
      last !== undefined && last.start + last.room > pool.start;
      last = pools.at(-1)
    ) {
      pools.pop();
      const shifted = pool.start - last.room;
      pool = {
        start: (last.start * last.count + shifted * pool.count) / (last.count + pool.count),
        room: last.room + pool.room,
        first: last.first,
        count: last.count + pool.count,
      };
    }
    pools.push(pool);
    before = place;
  });
  const starts: number[] = Array.from({ length: before + 1 }, () => 0);
  let floor = low;
  const clamped = pools.map((p) => {
    const start = Math.max(p.start, floor);
    floor = start + p.room;
    return { ...p, start };
  });
  let ceiling = high;
  for (const pool of [...clamped].reverse()) {
    let at = Math.min(pool.start, ceiling - pool.room);
    ceiling = at;
    for (let place = pool.first; place < pool.first + pool.count; place++) {
      const index = order[place] ?? 0;
      const room = wishes[index]?.room ?? 0;
      starts[index] = at + room / 2;
      at += room;
    }
  }
  return starts;
}

/** The least time of many runs, ms: what the work costs when nothing else takes the machine. */
export function best(run: () => unknown, times = 40): number {
  for (let i = 0; i < Math.min(10, times); i++) run();
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < times; i++) {
    const start = performance.now();
    run();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

/** The stage before or after; past the last stands the finished work. */
export function stageAfter(stage: number | undefined, by: 1 | -1, count: number): number | undefined {
  if (count === 0) return undefined;
  const next = (stage ?? count) + by;
  return next >= count ? undefined : Math.max(0, next);
}

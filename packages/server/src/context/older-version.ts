/** Under which editors show a text as it was, beside the text as it is. */
const schemes: ReadonlySet<string> = new Set([
  'git',
  'gitfs',
  'gitlens',
  'pr',
  'review',
  'svn',
  'fugitive',
  'diffview',
]);

/**
 * Whether an address is that of an older version. Nobody can mend its findings, and they would be counted beside those
 * of the plan. A scheme that is not known is taken for one that is edited: silence about a plan would look like a plan
 * in which nothing was found.
 */
export const isOlderVersion = (uri: string): boolean =>
  schemes.has(uri.slice(0, uri.indexOf(':')).toLowerCase());

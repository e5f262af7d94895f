import { unescaped } from '@cribwright/workspace/internal';

/** The path of a file as said from a folder: `caches/a.crib` below, `../fleet/a.crib` beside. */
export function relative(folder: string, uri: string): string | undefined {
  const [from, to] = [folder.split('/').slice(0, -1), uri.split('/')];
  let same = 0;
  while (same < from.length && from[same] === to[same]) same++;
  if (same < 1) return undefined;
  return [...from.slice(same).map(() => '..'), ...to.slice(same).map(unescaped)].join('/');
}

import type { Strut } from '@cribwright/model';

/**
 * A strut like another as the text of a plan writes it.
 *
 * @param head what it meets and where, as the plan writes it
 * @param out how far its base stands out, as the plan writes it
 */
export const strutText = ({ gear, lock }: Strut, own: string, head: string, out: string): string => {
  const lines = [`head  ${head}`, `base  ${out} out`, `lock  ${lock === 'collar' ? 'collar' : 'pinned'}`];
  return `strut ${own} : ${gear.name} {\n  ${lines.join('\n  ')}\n}`;
};

/** A name of more letters than this is shortened on the sheet. */
const most = 20;

/**
 * A name as a drawing writes it: a long one keeps its start and its end, by which names of one plan mostly differ. The
 * whole of it stands in the words for readers, and in the text of the plan.
 */
export function shortName(name: string): string {
  const letters = [...name];
  if (letters.length <= most) return name;
  const start = Math.ceil((most - 3) / 2);
  return `${letters.slice(0, start).join('')}...${letters.slice(letters.length - (most - 3 - start)).join('')}`;
}

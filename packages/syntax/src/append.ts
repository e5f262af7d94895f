/**
 * Puts all of a list behind another, however long it is. A call with each of them as an argument (`push(...more)`)
 * overflows the stack where there are over a hundred thousand, as in a text of a megabyte.
 */
export function append<T>(list: T[], more: Iterable<T>): void {
  for (const one of more) list.push(one);
}

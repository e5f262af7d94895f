/** The first of `T1`, `T2`, … that none of them has yet; as many are skipped as there are. */
export function freeName(prefix: string, taken: readonly { readonly name: string }[]): string {
  const names = new Set(taken.map((t) => t.name));
  let number = taken.length + 1;
  while (names.has(`${prefix}${number}`)) number++;
  return `${prefix}${number}`;
}

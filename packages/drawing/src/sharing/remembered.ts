/**
 * Remembers the last answer for each key, and gives it again as the same object as long as it comes from the same
 * things. What is the same object as before is not drawn again, nor sent again to the panel.
 *
 * @returns asks for the answer for `key`; `from` holds all that the answer hangs on besides
 */
export function remembered<Key extends object, Answer>(): (
  key: Key,
  from: readonly unknown[],
  make: () => Answer,
) => Answer {
  const last = new WeakMap<Key, { readonly from: readonly unknown[]; readonly answer: Answer }>();
  return (key, from, make) => {
    const known = last.get(key);
    if (known !== undefined && sameList(known.from, from)) return known.answer;
    const answer = make();
    last.set(key, { from, answer });
    return answer;
  };
}

const sameList = (a: readonly unknown[], b: readonly unknown[]): boolean => {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
  return true;
};

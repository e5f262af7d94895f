import { fromBase91 } from './base91.mjs';

/**
 * Makes of a packed text (JSON, compressed, in base 91) a function that unpacks it at the first call.
 *
 * @param {(bytes: Uint8Array) => Uint8Array} expand
 */
export const oncePacked = (expand) => (packed) => {
  let data;
  return () => {
    data ??= JSON.parse(new TextDecoder().decode(expand(fromBase91(packed))));
    return data;
  };
};

/** Where a message of a catalog begins. */
export const messageId = /^[\w-]+ =/gm;

/**
 * Makes of a packed catalog without ids a function that gives it with those of another, in whose order it is.
 *
 * @param {(packed: string) => () => Readonly<Record<string, string>>} unpack
 */
export const withIdsOf = (unpack) => (packed, other) => {
  const bare = unpack(packed);
  let data;
  return () => {
    data ??= Object.fromEntries(
      Object.entries(other()).map(([owner, text]) => {
        const ids = text.match(messageId)?.values();
        return [owner, bare()[owner].replace(/^=/gm, () => ids.next().value)];
      }),
    );
    return data;
  };
};

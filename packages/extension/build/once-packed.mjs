/**
 * Makes of a packed text (JSON, deflated, in base 64) a function that unpacks it at the first call.
 *
 * @param {(bytes: Uint8Array) => Uint8Array} inflate
 */
export const oncePacked = (inflate) => (packed) => {
  let data;
  return () => {
    data ??= JSON.parse(
      new TextDecoder().decode(inflate(Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0)))),
    );
    return data;
  };
};

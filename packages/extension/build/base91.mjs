// Bytes as text in 91 printable characters, `#` to `~` without the backslash: 13 bits in two of them, 14 where the
// value is small (the method of basE91). A seventh more text than bytes less a tenth of what base 64 takes.
// They stand in double quotes as they are.

const letter = (value) => String.fromCharCode(value < 57 ? value + 35 : value + 36);
const worth = (code) => (code < 92 ? code - 35 : code - 36);

/** @param {Uint8Array} bytes */
export function toBase91(bytes) {
  let [text, bits, held] = ['', 0, 0];
  for (const byte of bytes) {
    bits |= byte << held;
    held += 8;
    if (held <= 13) continue;
    const wide = (bits & 8191) <= 88;
    const value = bits & (wide ? 16383 : 8191);
    bits >>= wide ? 14 : 13;
    held -= wide ? 14 : 13;
    text += letter(value % 91) + letter(Math.floor(value / 91));
  }
  if (held > 0) text += letter(bits % 91);
  if (held > 7 || bits > 90) text += letter(Math.floor(bits / 91));
  return text;
}

/** @param {string} text */
export function fromBase91(text) {
  const bytes = [];
  let [first, bits, held] = [-1, 0, 0];
  for (let i = 0; i < text.length; i++) {
    const value = worth(text.charCodeAt(i));
    if (first < 0) {
      first = value;
      continue;
    }
    const pair = first + value * 91;
    first = -1;
    bits |= pair << held;
    held += (pair & 8191) > 88 ? 13 : 14;
    for (; held > 7; held -= 8) {
      bytes.push(bits & 255);
      bits >>= 8;
    }
  }
  if (first >= 0) bytes.push((bits | (first << held)) & 255);
  return Uint8Array.from(bytes);
}

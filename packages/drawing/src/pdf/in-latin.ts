/** Signs that the base-14 fonts lack, in signs that they have. */
const instead: Readonly<Record<string, string>> = {
  '−': '-',
  '≤': '<=',
  '≥': '>=',
  '→': '->',
  '←': '<-',
  '≈': 'about ',
  μ: 'mu',
  θ: 'theta',
  '½': '½',
  '\u00a0': ' ',
  '\u2009': ' ',
  '\u202f': ' ',
};

// Windows code page 1252 beyond Latin-1, which the standard fonts of a PDF can show.
const beyondLatin1 = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

/** Text as a PDF's standard fonts can show it. What they cannot show becomes its base letter, else `?`. */
export function inLatin(text: string): string {
  let out = '';
  for (const sign of text) {
    const known = instead[sign] ?? sign;
    for (const part of known) out += shown(part) ?? shown(part.normalize('NFD').charAt(0)) ?? '?';
  }
  return out;
}

/** Whether a text has letters that a PDF's standard fonts cannot show, not even by their base letter. */
export const outOfLatin = (text: string): boolean =>
  [...text].some((sign) => sign !== '?' && inLatin(sign).includes('?'));

const shown = (sign: string): string | undefined => {
  const code = sign.codePointAt(0) ?? 0;
  const plain = (code >= 0x20 && code < 0x7f) || (code >= 0xa1 && code <= 0xff);
  return plain || beyondLatin1.includes(sign) ? sign : undefined;
};

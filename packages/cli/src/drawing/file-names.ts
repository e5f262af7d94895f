/** Characters of one part of a name. File systems take 255 bytes in all, and a letter may be four. */
const longest = 40;

/**
 * Names for files, each given once: a second of the same name gets a number. Letters and digits of any script, the
 * rest as dashes, in lower case, so that no two differ in their case alone.
 */
export function fileNames(): (parts: readonly string[], ending: string) => string {
  const given = new Set<string>();
  return (parts, ending) => {
    const name = parts.map(plain).join('.');
    for (let n = 1; ; n++) {
      const full = `${name}${n === 1 ? '' : `-${n}`}.${ending}`;
      if (given.has(full)) continue;
      given.add(full);
      return full;
    }
  };
}

const plain = (text: string): string => {
  const words = text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-');
  const cut = [...words.replace(/^-/, '')].slice(0, longest).join('');
  return cut.replace(/-$/, '') || 'untitled';
};

/** Words to be read aloud, one after the other, each ended as a sentence is. */
export const sentences = (words: readonly string[]): string =>
  words
    .filter((w) => w !== '')
    .map((w) => (/[.!?]$/.test(w) ? w : `${w}.`))
    .join(' ');

/** What a reader sees of a manifest: by the last key of its path, or inside a list of these. */
const seen = new Set(['title', 'description', 'markdownDescription', 'label', 'enumDescriptions']);
/** A name is the same in every language. */
const sameEverywhere = new Set(['Cribwright']);

/**
 * A manifest whose visible words stand in tables beside it, as the editor wants them: `words` by the path at which
 * each stands. The manifest in the repository holds the words themselves, so that it works from there too.
 */
export function localized(manifest) {
  const words = {};
  const walk = (value, path, visible) => {
    if (typeof value === 'string') {
      if (!visible || sameEverywhere.has(value)) return value;
      const key = path.join('.');
      words[key] = value;
      return `%${key}%`;
    }
    if (Array.isArray(value)) return value.map((v, i) => walk(v, [...path, i], visible));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, v]) => [key, walk(v, [...path, key], seen.has(key))]),
    );
  };
  const { description, contributes, ...rest } = manifest;
  const made = walk({ description, contributes }, [], false);
  return { manifest: { ...rest, ...made }, words };
}

/** The table of another language. Fails where a word has no translation. */
export function translated(words, spanish) {
  return Object.fromEntries(
    Object.entries(words).map(([key, text]) => {
      const found = spanish[text];
      if (found === undefined) throw new Error(`No translation for: ${text}`);
      return [key, found];
    }),
  );
}

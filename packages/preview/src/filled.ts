/** A text of the panel with its holes filled: `{reason}` becomes `holes.reason`. */
export const filled = (text: string, holes: Readonly<Record<string, string>>): string =>
  text.replace(/\{(\w+)\}/g, (whole, key: string) => holes[key] ?? whole);

// Written by build/embed.mjs. Do not edit.
/** The bundled library: file name to text. */
export const library: Readonly<Record<string, string>> = {
};

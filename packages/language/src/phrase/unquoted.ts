/** Control signs and turns of writing: not to be seen, and a terminal, a page or a drawing takes them for orders. */
export const unseenSigns = /[^\P{Cc}\t]|[\u202a-\u202e\u2066-\u2069]/gu;

/** Without the quotes, and without the missing one. What cannot be seen is shown as `\ufffd`. */
export const unquoted = (text: string): string =>
  text.replace(/^"/, '').replace(/"$/, '').replace(unseenSigns, '\ufffd');

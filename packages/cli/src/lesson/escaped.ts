const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Signs that nobody sees: no page may hold them, and a terminal takes them for orders. */
const unseen = /[^\P{Cc}\t\n]|[\u202a-\u202e\u2066-\u2069]/gu;

/** Text that may stand in a page without being read as part of it. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => entities[c] ?? c).replace(unseen, '\ufffd');

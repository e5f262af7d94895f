const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text that may stand in a page without being read as part of it. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (c) => entities[c] ?? c);

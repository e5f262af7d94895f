/**
 * An edit somewhere in a text, as somebody types it, made of four whole numbers: where, how much is taken out, what is
 * put in, and in the place of what.
 */
export type SomeEdit = readonly [at: number, remove: number, insert: number, what: number];

/** Each number is below this. */
export const most = 10_000;

const pieces = [
  '',
  ' ',
  '\n',
  '{',
  '}',
  '"',
  '//',
  '/*',
  '*/',
  ',',
  ';',
  '7',
  '12 ft',
  'x',
  'A',
  'crib Z {\n  courses 6\n}\n',
  'let gap = 3 in\n',
  'rail height',
  '\n  // a note\n',
  'trailer',
  ' to 5',
  'B',
  'car',
  '3 lb',
] as const;

/** What is taken out: some characters, the next word or number, that word everywhere, or the next new name. */
const kinds = ['characters', 'word', 'word everywhere', 'name'] as const;
const words = /\b[A-Z0-9]\w*\b/g;
const names = /(?<=\b(?:crib|strut|strap|pad|vehicle|type|let|pattern|policy)\s+)\w+/g;

export function edited(text: string, [at, remove, insert, what]: SomeEdit): string {
  const start = Math.floor((at / most) * text.length);
  const put = pieces[insert % pieces.length] ?? '';
  const kind = kinds[what % kinds.length];
  // As often as not nothing is taken out.
  if (kind === 'characters')
    return text.slice(0, start) + put + text.slice(start + Math.max(0, (remove % 80) - 40));
  const search = kind === 'name' ? names : words;
  search.lastIndex = start;
  const hit = search.exec(text);
  if (!hit) return text + put;
  if (kind === 'word everywhere') return text.replaceAll(new RegExp(`\\b${hit[0]}\\b`, 'g'), put);
  return text.slice(0, hit.index) + put + text.slice(hit.index + hit[0].length);
}

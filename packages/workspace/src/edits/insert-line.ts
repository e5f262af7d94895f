import type { BoundBlock, TextChange } from '@cribwright/language';
import { marginBefore } from './margin-before.js';

/**
 * Puts a line or a block into a block's braces, indented and lined up as its neighbors are. `undefined` where it
 * has no braces.
 */
export function insertInto(
  text: string,
  block: BoundBlock,
  lines: string,
): { readonly changes: readonly TextChange[] } | undefined {
  const body = block.bodySpan;
  if (!body) return undefined;
  const inside = text.slice(body.start + 1, body.end - 1);
  const eol = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
  if (!/[\r\n]/.test(inside)) {
    const only = inside.trim();
    const joined = only === '' ? `{ ${lines} }` : `{ ${only}; ${lines} }`;
    // One line stays one line; what is longer opens the braces.
    const put = /[\r\n]/.test(lines) || /\/\//.test(inside) ? undefined : joined;
    if (put !== undefined) return { changes: [{ span: { start: body.start, end: body.end }, text: put }] };
  }
  const indent = indentOf(text, block);
  const written = lines
    .split(/\r\n|\r|\n/)
    .map((line, i) => `${indent}${i === 0 ? linedUp(text, block, line) : line}`)
    .join(eol);
  const last = block.properties.at(-1);
  const isBlock = lines.includes('{');
  // Among the lines, before any block: where a reader looks for it.
  if (last && !isBlock) {
    const end = endOfLine(text, last.span.end);
    return { changes: [{ span: { start: end, end }, text: `${eol}${written}` }] };
  }
  const among = isBlock ? amongBlocks(text, block, lines) : undefined;
  // Behind the line that closes the plan it would be outside.
  if (among !== undefined && among.at < body.end)
    return {
      changes: [
        { span: { start: among.at, end: among.at }, text: `${eol}${among.apart ? eol : ''}${written}` },
      ],
    };
  const close = text.lastIndexOf('}', body.end - 1);
  const start = close - marginBefore(text, close).length;
  const gap = isBlock && block.blocks.length + block.properties.length > 0 ? eol : '';
  return { changes: [{ span: { start, end: start }, text: `${gap}${written}${eol}` }] };
}

/** What a plan says last: the supports come before it. */
const closing: ReadonlySet<string> = new Set(['egress', 'steps', 'accept', 'expect']);

/** Behind the last block of its kind; else before what a plan says last. `apart`: with an empty line between. */
function amongBlocks(
  text: string,
  block: BoundBlock,
  lines: string,
): { readonly at: number; readonly apart: boolean } | undefined {
  const like = block.blocks.findLast((b) => lines.startsWith(`${b.schema.keyword} `));
  if (like !== undefined) return { at: endOfLine(text, like.span.end), apart: false };
  const within = [
    ...block.blocks.map((b) => ({ keyword: b.schema.keyword, span: b.span })),
    ...block.properties.map((p) => ({ keyword: p.schema.key, span: p.span })),
  ].sort((a, b) => a.span.start - b.span.start);
  const next = within.findIndex(({ keyword }) => closing.has(keyword));
  const previous = within[next - 1];
  return previous === undefined ? undefined : { at: endOfLine(text, previous.span.end), apart: true };
}

const endOfLine = (text: string, from: number): number => {
  const rest = /^[^\r\n]*/.exec(text.slice(from))?.[0] ?? '';
  // A block comment may go on to the next line; then right behind the words.
  return rest.includes('/*') ? from : from + rest.trimEnd().length;
};

function indentOf(text: string, block: BoundBlock): string {
  const neighbor = block.properties[0]?.span.start ?? block.blocks[0]?.span.start;
  const at = neighbor ?? block.span.start;
  const margin = marginBefore(text, at);
  return neighbor === undefined ? `${margin}  ` : margin;
}

/** `overhang  4 in`: the value under the values above it. */
function linedUp(text: string, block: BoundBlock, line: string): string {
  const keys = block.schema.properties.map((p) => p.key).sort((a, b) => b.length - a.length);
  const key = keys.find((k) => line.startsWith(`${k} `));
  const value = line.slice(key?.length ?? 0).trim();
  const last = block.properties.at(-1);
  const first = last?.terms.find((t) => t.start >= last.keySpan.end);
  if (key === undefined || value === '' || !last || !first) return line;
  const width = first.start - last.keySpan.start;
  const gap = text.slice(last.keySpan.end, first.start).length;
  return gap < 2 ? line : `${key}${' '.repeat(Math.max(1, width - key.length))}${value}`;
}

import { schema } from '@cribwright/language';
import { crib } from '@cribwright/language/internal';
import { parse } from '@cribwright/syntax';
import { describe, expect, it } from 'vitest';
import { blockSnippet, lineSnippet } from './snippet.js';

/** What a snippet puts in when every stop is left as it is. */
const filled = (snippet: string): string =>
  snippet
    .replace(/\$\{\d+\|([^,|]*)[^}]*\|\}/g, '$1')
    .replace(/\$\{\d+:((?:\\.|[^}\\])*)\}/g, '$1')
    .replace(/\\([\\$}])/g, '$1')
    .replaceAll('\t', '  ');

it('stops at the name and at each value of a block', () => {
  expect(blockSnippet(crib).split('\n').slice(0, 2)).toEqual([
    `crib ${'$'}{1:A} {`,
    `\ttimber   ${'$'}{2:Fir4x4 24 in long}`,
  ]);
});

it('offers the words where a line takes one of a few', () => {
  const base = crib.properties.find((p) => p.key === 'base');
  expect(base && lineSnippet(base)).toBe(`base ${'$'}{1|open,solid|}`);
});

describe.each(schema.map((b) => [b.keyword, b] as const))('%s', (_, block) => {
  it('puts in its own example', () => expect(filled(blockSnippet(block))).toBe(block.example));
  it('puts in text whose braces close', () => expect(parse(filled(blockSnippet(block))).issues).toEqual([]));
  it('has lines that begin with their key', () => {
    for (const property of block.properties) expect(filled(lineSnippet(property))).toMatch(property.key);
  });
});

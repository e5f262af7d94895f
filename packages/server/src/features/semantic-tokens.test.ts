import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { tokensOf } from './semantic-tokens.js';

async function colors(text: string): Promise<Map<string, string>> {
  const { file } = await atCursor(`<|>${text}`, { 'fleet.crib': fleet });
  return new Map(tokensOf(file).map(({ span, type }) => [file.text.slice(span.start, span.end), type]));
}

it('colors by what a word means', async () => {
  const found = await colors(trailerPlan);
  expect(
    Object.fromEntries(
      ['crib', 'timber', 'Fir4x4', '24', 'in', 'CountyTrailer', 'trailer', 'rail', 'A'].map((w) => [
        w,
        found.get(w),
      ]),
    ),
  ).toEqual({
    crib: 'keyword',
    timber: 'property',
    Fir4x4: 'class',
    '24': 'number',
    in: 'type',
    CountyTrailer: 'class',
    trailer: 'variable',
    rail: 'property',
    A: 'variable',
  });
});

it('lays no color over another, and keeps the order of the text', async () => {
  const { file } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  const tokens = tokensOf(file);
  expect(tokens.length).toBeGreaterThan(30);
  for (const [i, { span }] of tokens.entries())
    expect(span.start).toBeGreaterThanOrEqual(tokens[i - 1]?.span.end ?? 0);
});

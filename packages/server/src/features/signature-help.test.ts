import { fleet, pairs, trailerPlan } from '@cribwright/workspace/testing';
import { describe, expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { signatureAt } from './signature-help.js';

async function at(use: string, locale: 'en' | 'es' = 'en') {
  const text = trailerPlan
    .replace('use "fleet', 'use "pairs.crib"\nuse "fleet')
    .replace('\n  steps', `\n  ${use}\n\n  steps`);
  const { desk, file, offset } = await atCursor(
    text,
    { 'fleet.crib': fleet, 'pairs.crib': pairs },
    { locale },
  );
  return signatureAt(desk, file, offset);
}

it('shows what a pattern asks for', async () => {
  const help = await at('PairUnder(<|>)');
  expect(help?.signatures[0]?.label).toBe('PairUnder(rail: part, reach: length)');
});

it('says what a pattern is in the language of the reader', async () => {
  const documented = async (locale: 'en' | 'es') =>
    (await at('PairUnder(<|>)', locale))?.signatures[0]?.documentation;
  expect(await documented('en')).toMatchObject({
    value: expect.stringContaining('A named group of supports'),
  });
  expect(await documented('es')).toMatchObject({ value: expect.stringContaining('Un grupo de apoyos') });
});

describe('points at the value being filled in', () => {
  it.each([
    ['PairUnder(<|>)', 0],
    ['PairUnder(rail = trailer rail, <|>)', 1],
    ['PairUnder(reach = 24 <|>in)', 1],
    ['PairUnder(reach = 24 in, rail = <|>)', 0],
    ['PairUnder(rail = trailer rail, reach = <|>', 1],
  ])('%s', async (use, index) => expect((await at(use))?.signatures[0]?.activeParameter).toBe(index));
});

it('is silent outside the parentheses', async () => {
  expect(await at('PairUnder(rail = trailer rail, reach = 24 in)<|>')).toBeNull();
  expect(await at('Pair<|>Under(rail = trailer rail, reach = 24 in)')).toBeNull();
});

import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { highlightsAt } from './document-highlight.js';
import { referencesAt } from './references.js';

const where = (list: { uri: string; range: { start: { line: number } } }[]): string[] =>
  list.map(({ uri, range }) => `${uri.replace('memory:/', '')}:${range.start.line}`).sort();

it('finds a type in every file of the folder, with its declaration where asked', async () => {
  const others = { 'fleet.crib': fleet, 'second.crib': trailerPlan };
  const { desk, file, offset } = await atCursor(
    trailerPlan.replace('CountyTrailer', 'County<|>Trailer'),
    others,
  );
  const used = ['fleet.crib:7', 'plan.crib:8', 'second.crib:8'];
  expect(where(await referencesAt(desk, file, offset, false))).toEqual(used);
  expect(where(await referencesAt(desk, file, offset, true))).toEqual(['fleet.crib:3', ...used]);
});

it('keeps a crib to its own plan, though another plan has one of that name', async () => {
  const others = { 'fleet.crib': fleet, 'second.crib': trailerPlan };
  const { desk, file, offset } = await atCursor(trailerPlan.replace('crib A', 'crib <|>A'), others);
  expect(where(await referencesAt(desk, file, offset, true))).toEqual(['plan.crib:12', 'plan.crib:22']);
});

it('highlights the declaration as written and the uses as read', async () => {
  const { file, offset } = await atCursor(trailerPlan.replace('build  A', 'build  <|>A'), {
    'fleet.crib': fleet,
  });
  expect(highlightsAt(file, offset).map((h) => [h.range.start.line, h.kind])).toEqual([
    [12, 3],
    [22, 2],
  ]);
});

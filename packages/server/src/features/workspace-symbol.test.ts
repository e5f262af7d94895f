import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { spanOf } from '../context/positions.js';
import { atCursor } from '../testing/context-of.js';
import { linksOf } from './document-link.js';
import { matches, workspaceSymbols } from './workspace-symbol.js';

it('finds names in every file by their letters in order', async () => {
  const { desk } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  const found = await workspaceSymbols(desk, 'counref');
  expect(found.map((s) => [s.name, s.location.uri])).toEqual([['CountyReefer', 'memory:/fleet.crib']]);
});

it('finds a plan by its title', async () => {
  const { desk } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  expect((await workspaceSymbols(desk, 'scale house')).map((s) => s.name)).toEqual([
    'Trailer by the scale house',
  ]);
});

it('asks for the letters in order, capitals or not', () => {
  expect(matches('CountyTrailer', 'ctr')).toBe(true);
  expect(matches('CountyTrailer', 'rtc')).toBe(false);
  expect(matches('CountyTrailer', '')).toBe(true);
});

it('links the paths of use lines to their files', async () => {
  const { file } = await atCursor(`<|>${trailerPlan}`, { 'fleet.crib': fleet });
  const links = linksOf(file).map(({ range, target }) => {
    const { start, end } = spanOf(file, range);
    return [file.text.slice(start, end), target];
  });
  expect(links).toEqual([
    ['library/vehicles.crib', 'cribwright:/library/vehicles.crib'],
    ['fleet.crib', 'memory:/fleet.crib'],
  ]);
});

it('links the rules that a plan names to their pages', async () => {
  const { file } = await atCursor('<|>plan "x" {\n  expect crib-height\n}\n');
  expect(linksOf(file).map((l) => l.target)).toEqual(['cribwright:/rules/crib-height.md']);
});

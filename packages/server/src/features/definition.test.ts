import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { definitionAt } from './definition.js';
import { typeDefinitionAt } from './type-definition.js';

const at = (from: string, to: string) => atCursor(trailerPlan.replace(from, to), { 'fleet.crib': fleet });

it('goes from a step to the crib it builds', async () => {
  const { desk, file, offset } = await at('build  A', 'build  <|>A');
  const [link] = definitionAt(desk, file, offset);
  expect(link?.targetUri).toBe(file.uri);
  expect(trailerPlan.split('\n')[link?.targetSelectionRange.start.line ?? -1]).toBe('  crib A {');
});

it('goes to a type in another file', async () => {
  const { desk, file, offset } = await at('CountyTrailer', 'County<|>Trailer');
  expect(definitionAt(desk, file, offset)).toMatchObject([
    { targetUri: 'memory:/fleet.crib', targetSelectionRange: { start: { line: 3, character: 13 } } },
  ]);
});

it('goes into the library that ships with the tool', async () => {
  const { desk, file, offset } = await at('Fir4x4', 'Fir<|>4x4');
  const [link] = definitionAt(desk, file, offset);
  expect(link?.targetUri).toMatch(/^cribwright:\/library\/\w+\.crib$/);
});

it('opens the file that a use line names', async () => {
  const { desk, file, offset } = await at('"fleet', '"fle<|>et');
  expect(definitionAt(desk, file, offset)).toMatchObject([{ targetUri: 'memory:/fleet.crib' }]);
});

it('goes nowhere from a number', async () => {
  const { desk, file, offset } = await at('36,000', '36,<|>000');
  expect(definitionAt(desk, file, offset)).toEqual([]);
});

it('goes from a vehicle to its type', async () => {
  const { desk, file, offset } = await at('chock  trailer', 'chock  trai<|>ler');
  expect(typeDefinitionAt(desk, file, offset)).toMatchObject({ uri: 'memory:/fleet.crib' });
});

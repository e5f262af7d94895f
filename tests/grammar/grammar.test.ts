import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import type { IGrammar } from 'vscode-textmate';
import { loadGrammar, scopesOf, shown } from './tokenize.js';

let grammar: IGrammar;
beforeAll(async () => {
  grammar = await loadGrammar();
});

const scopeIn = (line: string, text: string): string | undefined =>
  scopesOf(grammar, line)
    .flat()
    .find((p) => p.text.trim() === text)?.scope;

it.each([
  ['// note', '// note', 'comment.line.double-slash'],
  ['use "library/vehicles.crib"', 'use', 'keyword.control.import'],
  ['use "library/vehicles.crib"', '"library/vehicles.crib"', 'string.quoted.double'],
  ['plan "Car" {', 'plan', 'storage.type.block'],
  ['  crib A {', 'crib', 'storage.type.block'],
  ['  crib A {', 'A', 'entity.name.type'],
  ['  vehicle trailer : VanTrailer53 {', 'VanTrailer53', 'entity.other.inherited-class'],
  ['vehicle type FlatTrailer : SemiTrailer "flat" {', 'vehicle type', 'storage.type.block'],
  ['    courses  11', 'courses', 'support.type.property-name'],
  ['    courses  11', '11', 'constant.numeric'],
  ['  axle 1 { at 40 ft; empty 4,000 lb }', 'empty', 'support.type.property-name'],
  ['  cargo  36,000 to 42,000 lb', '36,000', 'constant.numeric'],
  ['  cargo  36,000 to 42,000 lb', 'lb', 'keyword.other.unit'],
  ['  cargo  36,000 to 42,000 lb', 'to', 'keyword.other.phrase'],
  ['  grade 1.5 % toward rear', '%', 'keyword.other.unit'],
  ['  lock pinned', 'pinned', 'support.constant'],
  ['  at 21 ft, driver side 3 ft', 'driver side', 'support.constant'],
  ['  expect crib-height on A', 'crib-height', 'entity.name.function.rule'],
  ['  accept crib-height on A because "x" by "y" until 2027-03-01', '2027-03-01', 'constant.other.date'],
  ['  size 4x4', '4x4', 'constant.other.size'],
  ['  let gap = A height - 1.5 in', 'gap', 'variable.other.constant'],
  ['  let gap = A height - 1.5 in', '-', 'keyword.operator'],
  ['  1 chock trailer both directions', '1', 'constant.numeric.step'],
])('colors in %j the piece %j as %s', (line, text, scope) => {
  expect(scopeIn(line, text)).toBe(scope);
});

it('ends a text at its line, so that a missing quote spoils one line only', () => {
  const [, second] = scopesOf(grammar, 'plan "half\n  crib A {');
  expect(second?.find((p) => p.text.trim() === 'crib')?.scope).toBe('storage.type.block');
});

const folder = new URL('../../packages/language/src/library/', import.meta.url);
it.each(readdirSync(folder).filter((f) => f.endsWith('.crib')))(
  'leaves no piece of library/%s without a scope',
  (file) => {
    const bare = scopesOf(grammar, readFileSync(new URL(file, folder), 'utf8'))
      .flat()
      .filter((p) => p.scope === '-' && /[A-Za-z0-9]/.test(p.text));
    expect(bare).toEqual([]);
  },
);

const sample = new URL('./sample.crib', import.meta.url);
it('keeps the scopes of the whole sample', async () => {
  await expect(shown(grammar, readFileSync(sample, 'utf8'))).toMatchFileSnapshot('./sample.scopes.txt');
});

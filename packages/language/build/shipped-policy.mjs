// Writes the shipped policy as data, from the library file that holds its values.
// With --check it writes nothing and fails where what is committed differs.
// Run: node --conditions=source --import tsx packages/language/build/shipped-policy.mjs [--check]
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from '@cribwright/syntax';
import { bindFile } from '../src/binding/bind.ts';
import { shapeFile } from '../src/binding/shape.ts';
import { Lowering } from '../src/lowering/lowering.ts';
import { policyOf } from '../src/lowering/policy.ts';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const file = at('../../model/src/generated/shipped-policy.ts');

const text = readFileSync(at('../src/library/policy.crib'), 'utf8');
const shape = shapeFile('library/policy.crib', text, parse(text));
const around = {
  seen: [],
  seenBy: () => [],
  shapeOf: (uri) => (uri === shape.uri ? shape : undefined),
  elsewhere: () => undefined,
  rules: new Set(),
};
const [block] = bindFile(shape, 1, around).blocks;
const policy = policyOf(new Lowering(around, block), block, undefined);
if (policy === undefined) throw new Error('library/policy.crib: a limit is missing or cannot be read.');

const module = `// Written by packages/language/build/shipped-policy.mjs. Do not edit.
import type { Policy } from '../plan/policy.js';

/**
 * The limits that ship, as data: each with its value in SI (m, N, Pa, rad; ratios and counts plain) and its source.
 * The values are those of the bundled library's \`policy.crib\`, whose comments say why each was chosen.
 */
export const shippedPolicy: Policy = ${JSON.stringify(policy, undefined, 2)};
`;

const now = existsSync(file) ? readFileSync(file, 'utf8') : '';
if (now !== module) {
  if (process.argv.includes('--check')) {
    console.error('packages/model/src/generated/shipped-policy.ts is out of date: run npm run generate.');
    process.exitCode = 1;
  } else {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, module);
  }
}

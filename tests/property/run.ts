import '../random-seed.js';
import { properties } from './properties.js';

/** Runs one property by its name. It runs by itself, outside the test runner, in which arithmetic is ten times slower. */
const name = process.argv[2] ?? '';
const property = properties[name];
if (property === undefined) throw new Error(`no property "${name}"`);
process.stdout.write(`holds: ${property()}\n`);

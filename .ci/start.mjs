// npm start: sets everything up on a machine with Node and npm alone, checks the examples, says what is unsafe
// in them and why, draws them, and says how to open the editor. Ends with 0 when every `expect` held.
import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { install, needNode20, node, root } from './step.mjs';

needNode20();
install();

if (node(['packages/extension/build/bundle.mjs']) !== 0) {
  console.error('Cribwright could not be built. See the lines above.');
  process.exit(2);
}

const cribwright = (...args) => node(['packages/cli/dist/cribwright.cjs', ...args]);

console.log('\nThe examples of Alder Ridge County (invented), and what is unsafe in the faulty ones:\n');
const held = cribwright('test', 'examples');

const out = join(root, 'examples/out');
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
const plans = readdirSync(join(root, 'examples/plans')).filter((name) => name.endsWith('.crib'));
const undrawn = plans.filter((name) => {
  const file = join('examples/plans', name);
  return cribwright('draw', file, '-o', relative(root, join(out, `${basename(name, '.crib')}.svg`))) !== 0;
});

console.log(`
${plans.length - undrawn.length} drawings are in examples/out. They open in any browser.
${undrawn.length > 0 ? `Could not be drawn: ${undrawn.join(', ')}.\n` : ''}
To write plans with checks and drawing as you type:  npm run editor
To run all tests:                                    npm test
`);
process.exit(held !== 0 || undrawn.length > 0 || plans.length === 0 ? 1 : 0);

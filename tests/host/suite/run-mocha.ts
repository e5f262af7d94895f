import { hands } from './hands.js';
import { tally } from './lines.js';

/** Runs every test that was declared. Rejects when one fails, when one is skipped, and when there was none. */
export const runMocha = async (): Promise<void> => {
  // The browser build's own `run` reads the address of a page, which an extension host does not have.
  await new Promise<void>((done) => Mocha.prototype.run.call(mocha, () => done()));
  await hands('report', { tally });
  const { passed, failed, pending } = tally;
  if (passed + failed === 0) throw new Error('No test ran.');
  if (failed > 0) throw new Error(`${failed} of ${passed + failed} tests failed.`);
  if (pending > 0) throw new Error(`${pending} tests were skipped.`);
};

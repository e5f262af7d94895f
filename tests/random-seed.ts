import { configureGlobal } from 'fast-check';

/**
 * The seed of every random value in the tests: a whole number.
 *
 * @throws where `CRIBWRIGHT_SEED` is set and is not a whole number: a seed that is not used must not look tried.
 */
export function randomSeed(environment: Readonly<Record<string, string | undefined>>): number {
  const { CRIBWRIGHT_SEED: text = '77' } = environment;
  if (!/^-?\d{1,10}$/.test(text) || (Number(text) | 0) !== Number(text))
    throw new Error(`CRIBWRIGHT_SEED must be a whole number of at most 32 bits, not "${text}".`);
  return Number(text);
}

/**
 * Whatever is tried with random values is tried with the same ones at every run, so that a failure is a fault of what
 * was changed. `CRIBWRIGHT_SEED=12 npm run unit` tries others; a fault found so is fixed, and gets a test of its own.
 */
configureGlobal({ seed: randomSeed(process.env) });

import { configureGlobal } from 'fast-check';

/**
 * Whatever is tried with random values is tried with the same ones at every run, so that a failure is a fault of what
 * was changed. `CRIBWRIGHT_SEED=12 npm run unit` tries others; a fault found so is fixed, and gets a test of its own.
 */
configureGlobal({ seed: Number(process.env.CRIBWRIGHT_SEED ?? 77) });

import type { Problem } from '../workspace/checked.js';

/** A danger that nobody accepted, a check that could not run, a text that cannot be read. */
export const isUnsafe = ({ severity, finding }: Problem): boolean =>
  finding?.couldNotRun === true || (severity === 'danger' && finding?.accepted === undefined);

/** The same thing said of the same element of the same plan, wherever its line now stands. */
export const problemName = ({ code, finding, plan, message }: Problem): string =>
  JSON.stringify([code, plan, finding?.subject.element ?? message]);

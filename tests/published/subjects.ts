import { subject as axles } from './axles.checks.js';
import type { Subject } from './check.js';
import { subject as columns } from './columns.checks.js';
import { subject as resting } from './resting.checks.js';
import { subject as restingRandom } from './resting-random.checks.js';
import { subject as timber } from './timber.checks.js';
import { subject as units } from './units.checks.js';

/** Every published check, in the order in which `npm run verify` prints them. */
export const subjects: readonly Subject[] = [units, timber, columns, resting, restingRandom, axles];

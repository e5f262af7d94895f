import { subject as analysis } from './analysis.checks.js';
import { subject as axles } from './axles.checks.js';
import { subject as bearing } from './bearing.checks.js';
import type { Subject } from './check.js';
import { subject as columns } from './columns.checks.js';
import { subject as libraryMaterials } from './library-materials.checks.js';
import { subject as libraryTies } from './library-ties.checks.js';
import { subject as libraryVehicles } from './library-vehicles.checks.js';
import { subject as push } from './push.checks.js';
import { subject as pushLying } from './push-lying.checks.js';
import { subject as pushRandom } from './push-random.checks.js';
import { subject as resting } from './resting.checks.js';
import { subject as restingRandom } from './resting-random.checks.js';
import { subject as timber } from './timber.checks.js';
import { subject as units } from './units.checks.js';
import { subject as wedges } from './wedges.checks.js';

/** Every published check, in the order in which `npm run verify` prints them. */
export const subjects: readonly Subject[] = [
  units,
  timber,
  columns,
  wedges,
  bearing,
  resting,
  restingRandom,
  push,
  pushLying,
  pushRandom,
  analysis,
  axles,
  libraryMaterials,
  libraryTies,
  libraryVehicles,
];

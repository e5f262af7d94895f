import type { BoundFile, Declaration } from '../bound/bound-file.js';
import type { Kind } from '../kind/kind.js';
import { blockAt } from './at.js';
import { BlockScope, type Surroundings } from './file-scope.js';
import { LetVectors } from './let-vectors.js';

/** Whether names of a kind are seen by themselves. A part and an axle are seen through their vehicle, a step by its number. */
const seen: Readonly<Record<Kind, boolean>> = {
  plan: true,
  lesson: true,
  site: true,
  policy: true,
  surface: true,
  species: true,
  timber: true,
  'cargo type': true,
  'vehicle type': true,
  'strut type': true,
  'strap type': true,
  'chain type': true,
  'wire rope type': true,
  'step chock type': true,
  cache: true,
  pattern: true,
  'pattern use': true,
  parameter: true,
  value: true,
  vehicle: true,
  crib: true,
  'step chock': true,
  strut: true,
  tie: true,
  chock: true,
  pad: true,
  anchor: true,
  load: true,
  egress: true,
  dock: true,
  exercise: true,
  part: false,
  axle: false,
  step: false,
};
const everything = (Object.keys(seen) as Kind[]).filter((kind) => seen[kind]);

/** What each file sees of the others. */
export interface SeenFiles {
  readonly surroundings: (uri: string) => Surroundings;
}

const noLets = new LetVectors(() => undefined);

/** The scope of names at a place in a file. */
export const scopeAt = (files: SeenFiles, file: BoundFile, offset: number): BlockScope | undefined => {
  const around = files.surroundings(file.uri);
  const shape = around.shapeOf(file.uri);
  return shape && new BlockScope(shape, around, blockAt(file, offset), noLets);
};

/** Everything that may be named at a place: the plan's own, the file's, those of the files it uses, the library's. */
export const visibleAt = (files: SeenFiles, file: BoundFile, offset: number): readonly Declaration[] =>
  scopeAt(files, file, offset)?.names(everything) ?? [];

/** Parts of a vehicle, those of the types it extends too. Without one, of the vehicle that is meant at that place. */
export const partsOf = (
  files: SeenFiles,
  vehicle: Declaration | undefined,
  file: BoundFile,
  offset: number,
): readonly Declaration[] => scopeAt(files, file, offset)?.parts(vehicle) ?? [];

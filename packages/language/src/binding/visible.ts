import type { BoundFile, Declaration } from '../bound/bound-file.js';
import type { Kind } from '../kind/kind.js';
import { blockAt } from './at.js';
import { BlockScope, type Surroundings } from './file-scope.js';
import { LetVectors } from './let-vectors.js';

const everything: readonly Kind[] = [
  'plan',
  'lesson',
  'site',
  'policy',
  'surface',
  'species',
  'timber',
  'cargo type',
  'vehicle type',
  'strut type',
  'strap type',
  'chain type',
  'wire rope type',
  'step chock type',
  'cache',
  'pattern',
  'pattern use',
  'parameter',
  'value',
  'vehicle',
  'crib',
  'step chock',
  'strut',
  'tie',
  'chock',
  'pad',
  'anchor',
  'load',
  'egress',
  'dock',
  'exercise',
];

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

import type { Workspace } from '../workspace/workspace.js';
import { blockAt } from './at.js';
import type { BoundFile } from './bound-file.js';
import type { Declaration, Kind } from './declaration.js';
import { BlockScope } from './file-scope.js';
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

const noLets = new LetVectors(() => undefined);

/** The scope of names at a place in a file. */
export const scopeAt = (workspace: Workspace, file: BoundFile, offset: number): BlockScope | undefined => {
  const around = workspace.surroundings(file.uri);
  const shape = around.shapeOf(file.uri);
  return shape && new BlockScope(shape, around, blockAt(file, offset), noLets);
};

/** Everything that may be named at a place: the plan's own, the file's, those of the files it uses, the library's. */
export const visibleAt = (workspace: Workspace, file: BoundFile, offset: number): readonly Declaration[] =>
  scopeAt(workspace, file, offset)?.names(everything) ?? [];

/** Parts of a vehicle, those of the types it extends too. Without one, of the vehicle that is meant at that place. */
export const partsOf = (
  workspace: Workspace,
  vehicle: Declaration | undefined,
  file: BoundFile,
  offset: number,
): readonly Declaration[] => scopeAt(workspace, file, offset)?.parts(vehicle) ?? [];

import type { SourceNote } from '@cribwright/messages';
import type { Part, Vehicle } from '../plan/vehicle.js';

/** Where a number of a part comes from: as the part says, else as its vehicle does. */
export const sourceOfPart = (
  { part, vehicle }: { readonly part: Part; readonly vehicle: Vehicle },
  number: keyof NonNullable<Part['sources']>,
): SourceNote => part.sources?.[number] ?? vehicle.source;

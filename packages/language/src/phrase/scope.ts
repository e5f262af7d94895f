import type { Span } from '@cribwright/syntax/internal';
import type { Dimension, Vector } from '@cribwright/units';
import type { Declaration } from '../bound/bound-file.js';
import type { Kind } from '../kind/kind.js';

/** What names mean at one place. Matching asks; binding answers. */
export interface NameScope {
  readonly uri: string;
  /** The nearest declaration of that name among those kinds. */
  find(name: string, kinds: readonly Kind[]): Declaration | undefined;
  /** Whatever has that name. */
  findAny(name: string): Declaration | undefined;
  /** Names of those kinds that may be used here. */
  names(kinds: readonly Kind[]): readonly Declaration[];
  /** A part by name or by its singular: of the given vehicle, or of the one that is meant when none is said. */
  part(vehicle: Declaration | undefined, name: string): Declaration | undefined;
  parts(vehicle: Declaration | undefined): readonly Declaration[];
  /** The vehicle, or the type, that says it does not have this part of a type it extends. */
  withoutPart(vehicle: Declaration | undefined, name: string): Declaration | undefined;
  /** Whether some type that it is, or extends, is not known: then its parts are not known either. */
  typeUnknown(vehicle: Declaration | undefined): boolean;
  axle(vehicle: Declaration | undefined, name: string): Declaration | undefined;
  axles(vehicle: Declaration | undefined): readonly Declaration[];
  /** The vehicle that is meant when none is said. */
  readonly vehicle: Declaration | undefined;
  /** In a pattern, which vehicle is meant is known only where it is used: any part may be named. */
  readonly openParts: boolean;
  /** What a `let` or a parameter measures; `undefined` while that cannot be told. */
  vectorOf(declaration: Declaration): Vector | undefined;
  /** Files elsewhere in the folder or library that declare it, for a fix. */
  elsewhere(name: string, kinds: readonly Kind[]): string | undefined;
  readonly rules: ReadonlySet<string>;
  /** Where a further `use` line goes, before the others. */
  readonly usePlace: Span;
}

/** Dimensions in which a plain number is right. */
export const isPlain = (d: Dimension): boolean => d === 'count' || d === 'ratio';

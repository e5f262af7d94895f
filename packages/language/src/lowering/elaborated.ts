import type { Plan, Ref } from '@cribwright/model';
import type { Span } from '@cribwright/syntax/internal';
import type { BoundBlock } from '../bound/bound-file.js';
import type { Unread } from '../problems/unread.js';

/** Where an element or a line of it is written. */
export interface TextPlace {
  readonly uri: string;
  readonly span: Span;
  /** The text of that file. */
  readonly text: string;
  readonly block?: BoundBlock;
  /** Of a line, what stands after its key. */
  readonly value?: Span;
}

/** A plan as the engine takes it, and where each piece of it was written. */
export interface Elaborated {
  readonly plan: Plan;
  /** Keyed `element` or `element#property`. */
  readonly places: ReadonlyMap<string, TextPlace>;
  readonly block: BoundBlock;
  /** All of the file that the plan stands in. */
  readonly text: string;
  /** Something in the plan, or in what it reads from, could not be read. */
  readonly partial: boolean;
  /** What that is. Filled in once the other files are known. */
  readonly unread: readonly Unread[];
  /** The property if it is written, else the element, else the plan's title. */
  placeOf(ref: Ref): TextPlace;
}

/** Finds the property if it is written, else the element, else the plan's title. */
export const placeFinder =
  (places: ReadonlyMap<string, TextPlace>, block: BoundBlock, text: string): Elaborated['placeOf'] =>
  (ref) =>
    (ref.property === undefined ? undefined : places.get(`${ref.element}#${ref.property}`)) ??
    places.get(ref.element) ?? { uri: block.uri, span: block.headSpan, text, block };

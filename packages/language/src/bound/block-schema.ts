import type { Message } from '@cribwright/messages';
import type { Kind } from '../kind/kind.js';
import type { Pattern } from './shape.js';

/** Where a block or a `let` may stand: at the top of a file, or in a block of that keyword. */
export type Container = 'file' | (string & {});

/** What one kind of block is called, where it may stand, and what may be said in it. */
export interface BlockSchema {
  /** As written: `crib`, `vehicle type`, `egress`. */
  readonly keyword: string;
  readonly within: readonly Container[];
  /** A sentence or two for a reader who has never seen one. */
  readonly doc: Message;
  /** A whole small block. Also what completion puts in. */
  readonly example: string;
  readonly head: {
    readonly name: 'required' | 'optional' | 'none';
    /** A title in quotes. */
    readonly title?: 'required' | 'optional';
    /** After a colon. */
    readonly type?: {
      readonly kinds: readonly Kind[];
      readonly required: boolean;
      readonly extends: boolean;
    };
    /** Takes parameters in parentheses. */
    readonly parameters?: boolean;
  };
  /** What the name declares. */
  readonly declares: Kind | undefined;
  /** Prefix of the element's id in the engine's plan: `crib` gives `crib/A`. */
  readonly element?: string;
  /** The braces may be left out. */
  /** May stand only once in the block around it. */
  readonly once?: true;
  readonly bodyOptional: boolean;
  readonly properties: readonly PropertySchema[];
  /** Lines that start with a number instead of a key, as steps do. */
  readonly numbered?: PropertySchema;
  /** Names declared inside are seen inside only. */
  readonly ownScope?: boolean;
}

/** One line that may be said in a block. `T` is what its phrase yields. */
export interface PropertySchema<T = unknown> {
  readonly key: string;
  readonly phrase: Pattern<T>;
  readonly doc: Message;
  /** A whole line. */
  readonly example: string;
  readonly required?: boolean;
  readonly repeatable?: boolean;
}

export const property = <T>(
  key: string,
  phrase: Pattern<T>,
  rest: {
    readonly doc: Message;
    readonly example: string;
    readonly required?: boolean;
    readonly repeatable?: boolean;
  },
): PropertySchema<T> => ({ key, phrase, ...rest });

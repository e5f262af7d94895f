import type { Span } from '../grammar/syntax.js';
import type { BoundBlock } from './bound-file.js';

/** Everything that can be named and referred to. A reference says which kinds it will take. */
export type Kind =
  | 'plan'
  | 'lesson'
  | 'site'
  | 'policy'
  | 'surface'
  | 'species'
  | 'timber'
  | 'cargo type'
  | 'vehicle type'
  | 'strut type'
  | 'strap type'
  | 'chain type'
  | 'wire rope type'
  | 'step chock type'
  | 'cache'
  | 'pattern'
  | 'pattern use'
  | 'parameter'
  | 'value'
  | 'vehicle'
  | 'part'
  | 'axle'
  | 'crib'
  | 'step chock'
  | 'strut'
  | 'tie'
  | 'chock'
  | 'pad'
  | 'anchor'
  | 'load'
  | 'egress'
  | 'step'
  | 'dock'
  | 'exercise';

export interface Declaration {
  readonly uri: string;
  readonly kind: Kind;
  readonly name: string;
  readonly nameSpan: Span;
  /** The block that declares it. A `let` and a parameter stand in the block given here. */
  readonly block: BoundBlock | undefined;
  /** All of the statement or block. */
  readonly span: Span;
  /** Where the name may be used: the whole file and the files that use it, or one plan or pattern. */
  readonly scope: BoundBlock | undefined;
}

/** A name used somewhere. */
export interface Reference {
  readonly uri: string;
  readonly span: Span;
  readonly text: string;
  /** The kinds that may stand here. */
  readonly kinds: readonly Kind[];
  /** `undefined` where nothing of that kind has that name: a problem says so. */
  readonly target: Declaration | undefined;
}

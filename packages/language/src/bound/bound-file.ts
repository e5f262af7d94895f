import type { Span, SyntaxStatement, Term } from '@cribwright/syntax/internal';
import type { Dimension } from '@cribwright/units';
import type { Kind } from '../kind/kind.js';
import type { LanguageProblem } from '../problems/problem.js';
import type { BlockSchema, PropertySchema } from './block-schema.js';

/** One file, read, matched against the schema and with its names resolved. Plain data; never changes. */
export interface BoundFile {
  readonly uri: string;
  /** A count that the editor raises with each edit. */
  readonly version: number;
  readonly text: string;
  readonly statements: readonly SyntaxStatement[];
  readonly uses: readonly BoundUse[];
  readonly blocks: readonly BoundBlock[];
  /** `let` lines at the top of the file. */
  readonly lets: readonly BoundProperty[];
  /** Everything named in this file, in order. */
  readonly declarations: readonly Declaration[];
  /** Every name used in this file, in order. */
  readonly references: readonly Reference[];
  readonly problems: readonly LanguageProblem[];
  /** Braces or comments that do not close, or text that is no word: a formatter must leave the file alone. */
  readonly brokenLayout: boolean;
}

export interface BoundUse {
  readonly path: string;
  /** Without the quotes. */
  readonly pathSpan: Span;
  readonly span: Span;
  /** The file meant. `undefined` where it may not be used or is not there: a problem says so. */
  readonly target: string | undefined;
}

/** One block, matched against the schema: its head, its lines and the blocks in it. */
export interface BoundBlock {
  readonly schema: BlockSchema;
  readonly uri: string;
  readonly keywordSpan: Span;
  readonly name: string | undefined;
  readonly nameSpan: Span | undefined;
  /** The text in quotes, without them. */
  readonly title: string | undefined;
  readonly titleSpan: Span | undefined;
  /** After the colon: the type it is of, or the one it extends. */
  readonly type: Reference | undefined;
  readonly declaration: Declaration | undefined;
  /** Of a `pattern`. */
  readonly parameters: readonly BoundParameter[];
  /** From the keyword to the last word before the brace. */
  readonly headSpan: Span;
  /** All of it. */
  readonly span: Span;
  /** From `{` to past `}`. */
  readonly bodySpan: Span | undefined;
  readonly properties: readonly BoundProperty[];
  readonly blocks: readonly BoundBlock[];
  readonly parent: BoundBlock | undefined;
  /** The element of the engine's plan that it makes: `crib/A`. */
  readonly elementId: string | undefined;
  /** Its first words are not right: it was read as what is most likely meant, and a problem says so. */
  readonly misread?: true;
  /** Something in it could not be read as a line: what it says is not known whole. */
  readonly hasStray: boolean;
}

export interface BoundParameter {
  readonly name: string;
  readonly declaration: Declaration;
  readonly typeWord: string;
  readonly typeSpan: Span | undefined;
}

/** One line of a block. */
export interface BoundProperty {
  readonly schema: PropertySchema;
  readonly block: BoundBlock | undefined;
  /** As written: `courses`, `surface`. Of a step, its number. */
  readonly key: string;
  readonly keySpan: Span;
  readonly span: Span;
  readonly terms: readonly Term[];
  /** `undefined` where the line could not be read: a problem says why. */
  readonly match: Match | undefined;
}

/** What a phrase yielded: its slots by name. Read it through `read(property, match)`, which knows the types. */
export interface Match {
  readonly values: Readonly<Record<string, unknown>>;
  readonly pieces: readonly MatchedSpan[];
  readonly references: readonly Reference[];
  readonly problems: readonly LanguageProblem[];
}

/** One understood stretch of a line, for coloring, hover and completion. */
export interface MatchedSpan {
  readonly span: Span;
  readonly kind:
    | 'key'
    | 'word'
    | 'choice'
    | 'number'
    | 'unit'
    | 'reference'
    | 'name'
    | 'text'
    | 'rule'
    | 'operator';
  readonly slot: string | undefined;
  readonly reference?: Reference;
  readonly dimension?: Dimension;
}

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

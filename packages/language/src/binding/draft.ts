import type { SyntaxStatement } from '@cribwright/syntax/internal';
import type {
  BoundBlock,
  BoundParameter,
  BoundProperty,
  BoundUse,
  Declaration,
  Reference,
} from '../bound/bound-file.js';
import type { Kind } from '../kind/kind.js';
import type { LanguageProblem } from '../problems/problem.js';

/** A bound thing while it is being made. Once a file is bound nobody writes to it again. */
export type Draft<T> = { -readonly [K in keyof T]: T[K] };

export interface DraftBlock extends Draft<Omit<BoundBlock, 'properties' | 'blocks' | 'parameters'>> {
  readonly properties: DraftLine[];
  readonly blocks: BoundBlock[];
  readonly parameters: BoundParameter[];
  /** The words after the colon, resolved later. */
  typeTerms: SyntaxStatement['terms'];
}

/** A line that has found its key; its phrase is matched once names can be resolved. */
export interface DraftLine extends Draft<BoundProperty> {
  /** Index of the first term past the key. */
  readonly from: number;
  /** Told already: its first words are not right. The line is then read as what is most likely meant. */
  readonly misread?: LanguageProblem | undefined;
}

/** Names that text which could not be read may have given. That they are not known follows from it. */
export interface LostNames {
  /** Words of lines that could not be read. */
  readonly words: Set<string>;
  /** Kinds of which something has no name that could be read, or the name of another. */
  readonly kinds: Set<Kind>;
  /** Whether a line that was to use another file could not be read. */
  use: boolean;
}

/** A file with its blocks and names found, but nothing yet resolved. */
export interface FileShape {
  readonly uri: string;
  readonly text: string;
  readonly statements: readonly SyntaxStatement[];
  readonly uses: Draft<BoundUse>[];
  readonly blocks: DraftBlock[];
  readonly lets: DraftLine[];
  readonly declarations: Declaration[];
  readonly references: Reference[];
  readonly problems: LanguageProblem[];
  /** Names that files which use this one can see, and names of each plan and pattern. */
  readonly names: Map<BoundBlock | 'file', Map<string, Declaration[]>>;
  brokenLayout: boolean;
  /** What was not read may have named. */
  readonly lost: LostNames;
}

import type { SyntaxStatement } from '@cribwright/syntax/internal';
import type {
  BoundBlock,
  BoundParameter,
  BoundProperty,
  BoundUse,
  Declaration,
  Reference,
} from '../bound/bound-file.js';
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
}

import type { Term } from '@cribwright/syntax/internal';
import type { QuantityRule } from '../bound/shape.js';
import type { NameScope } from './scope.js';

export interface ExpressionRequest {
  readonly terms: readonly Term[];
  /** Of the file that the terms stand in. */
  readonly text: string;
  readonly scope: NameScope;
  readonly rule: QuantityRule;
  /** Words that the line may go on with: never taken for a unit or a name. */
  readonly reserved: ReadonlySet<string>;
  /** Any name may stand for a value, even an unknown one. */
  readonly free: boolean;
}

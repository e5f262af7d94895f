import type { Vector } from '@cribwright/units';
import type { Declaration } from '../bound/bound-file.js';
import { vectorOfExpression } from '../phrase/measure.js';
import { parseExpression } from '../phrase/parse-expression.js';
import type { NameScope } from '../phrase/scope.js';
import type { DraftLine } from './draft.js';

/** What each `let` measures, worked out once and safe against rings. */
export class LetVectors {
  private readonly known = new Map<Declaration, Vector | undefined>();
  private readonly open: Declaration[] = [];
  /** Rings met on the way: each is reported once. */
  readonly rings: Declaration[][] = [];

  constructor(
    private readonly linesOf: (declaration: Declaration) => { line: DraftLine; text: string } | undefined,
  ) {}

  vectorOf(declaration: Declaration, scope: NameScope): Vector | undefined {
    if (this.known.has(declaration)) return this.known.get(declaration);
    const at = this.open.indexOf(declaration);
    if (at >= 0 || this.open.length > 64) {
      this.rings.push(this.open.slice(Math.max(0, at)));
      return undefined;
    }
    const found = this.linesOf(declaration);
    if (!found) return undefined;
    this.open.push(declaration);
    const { line, text } = found;
    const read = parseExpression(3, {
      terms: line.terms,
      text,
      scope,
      rule: { dimensions: [], range: true },
      reserved: new Set(),
      free: true,
    });
    // What could not be read measures nothing: its own error says so.
    const whole = read && read.problems.length === 0 && read.next >= line.terms.length;
    const vector =
      whole && vectorOfExpression(read.expression, scope, (e) => text.slice(e.span.start, e.span.end), []);
    this.open.pop();
    this.known.set(declaration, vector || undefined);
    return vector || undefined;
  }
}

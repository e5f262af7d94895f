import type { BoundFile } from '@cribwright/language';
import type { Declaration, Reference } from '@cribwright/language/internal';
import type { Span } from '@cribwright/syntax/internal';
import { touches } from './positions.js';

/** The name under the cursor, whether it is declared there or used. */
export function nameAt(
  file: BoundFile,
  offset: number,
):
  | { readonly span: Span; readonly target: Declaration; readonly reference: Reference | undefined }
  | undefined {
  const reference = file.references.find((r) => touches(r.span, offset));
  if (reference) return reference.target && { span: reference.span, target: reference.target, reference };
  const target = file.declarations.find((d) => touches(d.nameSpan, offset));
  return target && { span: target.nameSpan, target, reference: undefined };
}

export const sameDeclaration = (a: Declaration, b: Declaration): boolean =>
  a.uri === b.uri && a.nameSpan.start === b.nameSpan.start && a.kind === b.kind;

/** Every use of a name in one file. */
export const usesIn = (file: BoundFile, target: Declaration): readonly Reference[] =>
  file.references.filter((r) => r.target !== undefined && sameDeclaration(r.target, target));

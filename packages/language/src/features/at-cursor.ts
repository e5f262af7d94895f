import type { BoundBlock, BoundFile, BoundProperty } from '../binding/bound-file.js';
import type { Declaration, Reference } from '../binding/declaration.js';
import type { Span } from '../grammar/syntax.js';
import { touches } from './positions.js';

/** The innermost block whose text touches the cursor. */
export function blockAt(file: BoundFile, offset: number): BoundBlock | undefined {
  let found: BoundBlock | undefined;
  let among: readonly BoundBlock[] = file.blocks;
  for (;;) {
    const next = among.find((b) => touches(b.span, offset));
    if (!next) return found;
    found = next;
    among = next.blocks;
  }
}

/** The line of a block, or the `let` at the top, that touches the cursor. */
export function propertyAt(file: BoundFile, offset: number): BoundProperty | undefined {
  const lines = blockAt(file, offset)?.properties ?? file.lets;
  return lines.find((p) => touches(p.span, offset));
}

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

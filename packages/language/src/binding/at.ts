import type { Span } from '@cribwright/syntax/internal';
import type { BoundBlock, BoundFile, BoundProperty } from '../bound/bound-file.js';

const holds = (span: Span | undefined, offset: number): boolean =>
  span !== undefined && span.start <= offset && offset <= span.end;

/** The innermost block around a place. On a block's head that is the block itself. */
export function blockAt(file: BoundFile, offset: number): BoundBlock | undefined {
  let found: BoundBlock | undefined;
  let list = file.blocks;
  for (;;) {
    const inner = list.find((b) => holds(b.span, offset));
    if (!inner) return found;
    found = inner;
    list = inner.blocks;
  }
}

/** The line around a place. */
export function propertyAt(file: BoundFile, offset: number): BoundProperty | undefined {
  const block = blockAt(file, offset);
  return (block?.properties ?? file.lets).find((p) => holds(p.span, offset));
}

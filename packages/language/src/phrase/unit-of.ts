import type { Expression } from './expression.js';

/** The unit that a quantity is written in, the smallest where there are several. */
export const unitOf = (e: Expression): string | undefined => {
  switch (e.kind) {
    case 'number':
      return e.unit?.text;
    case 'compound':
      return e.pieces.at(-1)?.unit?.text;
    case 'range':
      return unitOf(e.high);
    case 'tolerance':
      return unitOf(e.middle);
    case 'group':
    case 'negative':
      return unitOf(e.of);
    case 'binary':
      return unitOf(e.left) ?? unitOf(e.right);
    default:
      return undefined;
  }
};

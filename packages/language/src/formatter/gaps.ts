import type { TextToken } from './pieces.js';

/**
 * White space between two pieces on one line, before columns are lined up. Never parts two pieces that the
 * author wrote together where it could change what they mean, and never joins two.
 */
export function inlineGap(was: string, before: TextToken, after: TextToken, inParens: boolean): string {
  if (before.kind === 'open' && after.kind === 'close') return '';
  if (after.kind === 'line comment') return '  ';
  if (isBrace(before) || isBrace(after)) return ' ';
  if (after.kind === 'semicolon') return '';
  if (before.kind === 'semicolon') return ' ';
  if (is(after, ',')) return before.kind === 'number' && was === '' ? '' : is(before, ',') ? ' ' : '';
  if (is(before, ',')) return after.kind === 'number' && was === '' ? '' : ' ';
  if (is(after, ':') && before.kind === 'word') return inParens ? '' : ' ';
  if (is(before, ':') && after.kind === 'word') return ' ';
  // Two spaces may set phrases apart; more may not.
  return was === '' ? '' : was.length > 1 && !/[\t]/.test(was) ? '  ' : ' ';
}

const isBrace = (piece: TextToken): boolean => piece.kind === 'open' || piece.kind === 'close';
const is = (piece: TextToken, symbol: string): boolean => piece.kind === 'symbol' && piece.text === symbol;

/** The little that the layout pass needs to know of a token. */
export interface LayoutToken {
  readonly kind: 'open' | 'close' | 'end' | 'comma' | 'other';
  readonly start: number;
  readonly end: number;
  /** Of its line, 0 for a token that starts at the margin. */
  readonly column: number;
  readonly line: number;
  /** Of `open` and `close`: a bracket that stands in the place of a brace. */
  readonly bracket?: boolean;
}

/** What the layout pass had to mend, so that the rest of the text could still be read. */
export type LayoutIssue =
  /** `at` is where it was taken to end. */
  | { readonly kind: 'not closed'; readonly start: number; readonly end: number; readonly at: number }
  /** The line it starts at is meant as a block: what stands further in below it was taken to belong to it. */
  | { readonly kind: 'not opened'; readonly start: number; readonly end: number }
  | { readonly kind: 'stray close'; readonly start: number; readonly end: number }
  /** `[` or `]`, read as the brace that it stands for. */
  | { readonly kind: 'bracket'; readonly start: number; readonly end: number }
  /** Right after another opening brace. */
  | { readonly kind: 'opened twice'; readonly start: number; readonly end: number }
  | { readonly kind: 'too deep'; readonly start: number; readonly end: number }
  | { readonly kind: 'too long'; readonly start: number; readonly end: number };

/** Deeper than any plan needs; a file of braces alone must not exhaust the parser. */
export const deepest = 16;
/** About 20,000 lines. */
export const longest = 200_000;

type Made<T> = { readonly token: T } | { readonly make: 'end' | 'close' | 'open'; readonly at: number };

interface Opened {
  readonly start: number;
  readonly end: number;
  readonly indent: number;
  readonly line: number;
  /** Nothing was read in it yet. */
  fresh: boolean;
  /** Its lines start no further in than it: indentation tells nothing of its end. */
  flat: boolean;
}

/**
 * Ends every statement and balances the braces, so that any text can be parsed. A line break after a comma, after
 * `{` or before `{` ends nothing. Where braces do not balance, indentation decides. With too few closing braces, a block
 * ends at the first line that starts no further in than the line which opened it. With too few opening braces, a line
 * without one opens a block where the lines below start further in than it, up to a closing brace below its start. Any
 * other closing brace that matches no block by its place closes nothing.
 */
export function layOut<T extends LayoutToken>(
  tokens: readonly T[],
): { readonly made: readonly Made<T>[]; readonly issues: readonly LayoutIssue[] } {
  const made: Made<T>[] = [];
  const issues: LayoutIssue[] = [];
  const kept = tokens.length > longest ? tokens.slice(0, longest) : tokens;
  const cut = tokens[longest];
  if (cut) issues.push({ kind: 'too long', start: cut.start, end: cut.end });

  const balance = surplus(kept);
  const onward = nextThat(kept, (t) => t.kind !== 'end');
  const byIndent = balance > 0;
  let spare = Math.max(0, -balance);
  const nextWord = spare > 0 ? nextThat(kept, (t) => t.kind === 'other') : [];
  const closed = spare > 0 ? closedLines(kept) : undefined;
  const opening = byIndent ? new Set(kept.flatMap((t) => (t.kind === 'open' ? [t.line] : []))) : undefined;
  const open: Opened[] = [];
  let last: 'start' | 'open' | 'end' | 'comma' | 'closed' | 'other' = 'start';
  let line = -1;
  let indent = 0;
  let lineStart = 0;
  let tooDeep = 0;
  // One in a text is a slip; more of them are told as blocks that never close.
  let doubled = false;

  const end = (at: number) => {
    if (last === 'start' || last === 'end' || last === 'open') return;
    made.push({ make: 'end', at });
    last = 'end';
  };
  const close = (at: number) => {
    end(at);
    made.push({ make: 'close', at });
    open.pop();
    last = 'closed';
  };

  for (const [index, token] of kept.entries()) {
    const first = token.kind !== 'end' && token.line !== line;
    if (first) {
      line = token.line;
      indent = token.column;
      lineStart = token.start;
      while (byIndent) {
        const inner = open.at(-1);
        if (!inner || inner.indent < indent || (token.kind === 'close' && inner.indent === indent)) break;
        if (inner.fresh && token.kind === 'other') inner.flat = true;
        // A plan holds blocks; what stands in it seldom does.
        if (inner.flat && (open.length < 2 || !opening?.has(line))) break;
        issues.push({ kind: 'not closed', start: inner.start, end: inner.end, at: token.start });
        close(token.start);
      }
    }
    if (last === 'closed' && token.kind !== 'end') end(token.start);
    const within = open.at(-1);
    if (within && token.kind === 'other') within.fresh = false;
    if (token.bracket) issues.push({ kind: 'bracket', start: token.start, end: token.end });
    switch (token.kind) {
      case 'end': {
        if (last === 'start' || last === 'end' || last === 'open') break;
        const next = onward[index];
        if (last === 'comma' && next?.kind !== 'close') break;
        if (last !== 'closed' && next?.kind === 'open') break;
        if (
          spare > 0 &&
          last === 'other' &&
          next?.kind === 'other' &&
          next.line > line &&
          next.column > indent &&
          closed?.has(line) === true
        ) {
          spare--;
          issues.push({ kind: 'not opened', start: lineStart, end: token.start });
          open.push({
            start: token.start,
            end: token.start,
            indent,
            line,
            fresh: true,

            flat: false,
          });
          made.push({ make: 'open', at: token.start });
          last = 'open';
          break;
        }
        made.push({ token });
        last = 'end';
        break;
      }
      case 'open':
        if (open.length >= deepest) {
          if (tooDeep === 0) issues.push({ kind: 'too deep', start: token.start, end: token.end });
          tooDeep++;
          break;
        }
        if (byIndent && last === 'open' && !first && within?.line === line && !doubled) {
          doubled = true;
          issues.push({ kind: 'opened twice', start: token.start, end: token.end });
          break;
        }
        open.push({
          start: token.start,
          end: token.end,
          indent,
          line,
          fresh: true,

          flat: false,
        });
        made.push({ token });
        last = 'open';
        break;
      case 'close':
        if (tooDeep > 0) {
          tooDeep--;
          break;
        }
        if (open.length === 0 || (spare > 0 && isSpare(open.at(-1), token, first, line, nextWord[index]))) {
          spare--;
          issues.push({ kind: 'stray close', start: token.start, end: token.end });
          break;
        }
        end(token.start);
        open.pop();
        made.push({ token });
        last = 'closed';
        break;
      default:
        made.push({ token });
        last = token.kind;
    }
  }
  const finish = kept.at(-1)?.end ?? 0;
  for (const left of [...open].reverse()) {
    issues.push({ kind: 'not closed', start: left.start, end: left.end, at: finish });
    close(finish);
  }
  end(finish);
  return { made, issues };
}

/**
 * Whether a closing brace, by its place, does not belong to the innermost open block: it starts further in than the
 * block, or what comes next does, and so belongs to the block still.
 *
 * @param next the next word after the brace
 */
const isSpare = (
  inner: Opened | undefined,
  token: LayoutToken,
  first: boolean,
  line: number,
  next: LayoutToken | undefined,
): boolean =>
  inner !== undefined &&
  (first
    ? token.column > inner.indent || (next !== undefined && next.line > line && next.column > inner.indent)
    : inner.line < line);

/** Lines whose lines below, as far as they start further in, end at a closing brace right below the line's start. */
function closedLines(tokens: readonly LayoutToken[]): ReadonlySet<number> {
  const closed = new Set<number>();
  const waiting: LayoutToken[] = [];
  let line = -1;
  for (const t of tokens) {
    if (t.kind === 'end' || t.line === line) continue;
    line = t.line;
    for (let w = waiting.at(-1); w && t.column <= w.column; w = waiting.at(-1)) {
      if (t.kind === 'close' && t.column === w.column) closed.add(w.line);
      waiting.pop();
    }
    waiting.push(t);
  }
  return closed;
}

const surplus = (tokens: readonly LayoutToken[]): number =>
  tokens.reduce((sum, t) => sum + (t.kind === 'open' ? 1 : t.kind === 'close' ? -1 : 0), 0);

/** For each token the next of a kind: found in one walk, for there may be a megabyte of them. */
const nextThat = <T extends LayoutToken>(
  tokens: readonly T[],
  fits: (token: T) => boolean,
): readonly (T | undefined)[] => {
  const found: (T | undefined)[] = new Array(tokens.length);
  let next: T | undefined;
  for (let i = tokens.length - 1; i >= 0; i--) {
    found[i] = next;
    const token = tokens[i];
    if (token && fits(token)) next = token;
  }
  return found;
};

import type { Span } from '@cribwright/syntax/internal';
import type { Kind } from '../kind/kind.js';
import type { LanguageProblem } from '../problems/problem.js';
import type { FileShape } from './draft.js';
import type { BlockScope } from './file-scope.js';

/** Kinds that other files give. */
const ofFiles: readonly Kind[] = ['cache', 'policy', 'pattern', 'timber', 'surface', 'species', 'cargo type'];

const fromFiles = (kind: Kind): boolean => kind.endsWith(' type') || ofFiles.includes(kind);

/** Whether a name is unknown only because text that may have given it could not be read. That text has its own error. */
export function followsFromLost(
  p: LanguageProblem,
  { lost, uses, text }: FileShape,
  scope: BlockScope,
): boolean {
  if (p.code === 'word-unexpected') return lost.kinds.has('value');
  if (p.code !== 'unknown-name' && p.code !== 'unknown-part') return false;
  const word = text.slice(p.span.start, p.span.end);
  if (lost.words.has(word)) return true;
  if (p.code === 'unknown-part')
    return scope.vehicle ? scope.vehicle.block?.misread === true : lost.words.size > 0;
  const kinds = p.about ?? [];
  const failedUse = lost.use || uses.some((u) => u.target === undefined);
  return kinds.some((k) => lost.kinds.has(k) || (failedUse && fromFiles(k)));
}

/** A volume is right where its type is known: only the name of the type is wrong. */
export const volumeOfUnknown = (problems: readonly LanguageProblem[]): readonly LanguageProblem[] =>
  problems.some((p) => p.code === 'unknown-name' && p.about?.includes('cargo type'))
    ? problems.filter((p) => p.code !== 'wrong-dimension')
    : problems;

/** Signs, quotes and braces come first: what else is wrong at such a place follows from them. */
const ofLayout = /^(?:brace-|text-(?!unquoted)|comment-not-closed|strange-character|file-not-utf8)/;

/** Whether it tells of a sign, a quote or a brace. */
export const isOfLayout = (p: LanguageProblem): boolean => ofLayout.test(p.code);

/** Where signs, quotes and braces are wrong, so that it can be asked of many places. */
export class SlipPlaces {
  /** In order, no two of them overlapping. */
  private readonly places: Span[] = [];
  readonly first: ReadonlySet<LanguageProblem>;

  constructor(problems: readonly LanguageProblem[]) {
    const first = new Set<LanguageProblem>();
    const sorted = problems.filter(isOfLayout).sort((a, b) => a.span.start - b.span.start);
    for (const p of sorted) {
      const last = this.places.at(-1);
      if (last && p.span.start < last.end) continue;
      this.places.push(p.span);
      first.add(p);
    }
    this.first = first;
  }

  /** Whether one of them lies in a stretch, at least in part. */
  overlap({ start, end }: Span): boolean {
    let [low, high] = [0, this.places.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.places[middle]?.end ?? 0) <= start) low = middle + 1;
      else high = middle;
    }
    const found = this.places[low];
    return found !== undefined && found.start < end;
  }
}

/** One error for each place. */
export const once = (problems: readonly LanguageProblem[], places: SlipPlaces): readonly LanguageProblem[] =>
  places.first.size === 0 ? problems : problems.filter((p) => places.first.has(p) || !places.overlap(p.span));

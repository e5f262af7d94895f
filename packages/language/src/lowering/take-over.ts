import type { Span } from '@cribwright/syntax/internal';
import type { BoundBlock, BoundFile } from '../bound/bound-file.js';
import { type Elaborated, placeFinder, type TextPlace } from './elaborated.js';
import type { ElaboratedPlan } from './plan.js';

/** What the plans of a file came to before an edit. */
export interface ElaboratedBefore {
  readonly file: BoundFile;
  readonly parts: readonly { readonly block: BoundBlock; readonly elaborated: ElaboratedPlan }[];
}

/** Gives what a plan came to before an edit, at its place of now; `undefined` where it must be made anew. */
export type TakeOver = (block: BoundBlock) => Elaborated | undefined;

/**
 * What may be taken over of a file that was made into plans before an edit. A plan comes to the same where its own text
 * is the same, and all of its file that stands in no plan. Where a file cannot be read whole, or sites and lessons hold
 * plans together, nothing is taken over.
 *
 * @param before all that its plans see in other files must still be the same
 */
export function takeOver(before: ElaboratedBefore, now: BoundFile): TakeOver {
  const [was, is] = [piecesOf(before.file), piecesOf(now)];
  if (!was || !is) return nothing;
  const [restBefore, rest] = [was, is].map((pieces) => pieces.filter((p) => p.plan === undefined));
  if (!restBefore || !rest || restBefore.length !== rest.length) return nothing;
  if (rest.some((piece, i) => piece.text !== restBefore[i]?.text)) return nothing;

  const parts = new Map(before.parts.map((part) => [part.block, part.elaborated]));
  const known = new Map(was.flatMap((piece) => (piece.plan ? [[piece.text, piece] as const] : [])));
  const texts = new Map(is.flatMap((piece) => (piece.plan ? [[piece.plan, piece.text] as const] : [])));
  const blocks = new Map<BoundBlock, BoundBlock>();
  pair(before.file.blocks.filter(isNoPlan), now.blocks.filter(isNoPlan), blocks);

  return (block) => {
    const piece = known.get(texts.get(block) ?? '');
    const old = piece?.plan && parts.get(piece.plan);
    if (!piece?.plan || !old?.made || old.problems.length > 0) return undefined;
    const from = piece.plan;
    pair([from], [block], blocks);
    const distance = ({ start, end }: Span): number => {
      if (from.span.start <= start && end <= from.span.end) return block.span.start - from.span.start;
      const i = restBefore.findIndex((r) => r.span.start <= start && end <= r.span.end);
      return (rest[i]?.span.start ?? Number.NaN) - (restBefore[i]?.span.start ?? Number.NaN);
    };
    const places = new Map<string, TextPlace>();
    for (const [key, place] of old.made.places) {
      const moved = place.uri === now.uri ? movedPlace(place, distance(place.span), now.text, blocks) : place;
      if (!moved) return undefined;
      places.set(key, moved);
    }
    return { ...old.made, places, block, text: now.text, placeOf: placeFinder(places, block, now.text) };
  };
}

const nothing: TakeOver = () => undefined;

interface Piece {
  readonly span: Span;
  readonly text: string;
  readonly plan: BoundBlock | undefined;
}

/** The statements at the top of a file; `undefined` where plans may hang on one another. */
function piecesOf(file: BoundFile): readonly Piece[] | undefined {
  const { blocks, problems, statements, text } = file;
  if (file.brokenLayout || problems.some((p) => p.severity === 'error')) return undefined;
  if (blocks.some((b) => gathers.includes(b.schema.keyword))) return undefined;
  const plans = new Map(blocks.flatMap((b) => (isNoPlan(b) ? [] : [[b.span.start, b] as const])));
  return statements.map((span) => ({
    span,
    text: text.slice(span.start, span.end),
    plan: plans.get(span.start),
  }));
}

/** Blocks that hold plans, or say which belong together. */
const gathers: readonly string[] = ['site', 'lesson'];

const isNoPlan = (block: BoundBlock): boolean => block.schema.keyword !== 'plan';

/** Blocks of the same text, each with the one that stands there now. */
function pair(
  before: readonly BoundBlock[],
  now: readonly BoundBlock[],
  into: Map<BoundBlock, BoundBlock>,
): void {
  for (const [i, old] of before.entries()) {
    const block = now[i];
    if (!block) continue;
    into.set(old, block);
    pair(old.blocks, block.blocks, into);
  }
}

function movedPlace(
  { uri, span, block, value }: TextPlace,
  by: number,
  text: string,
  blocks: ReadonlyMap<BoundBlock, BoundBlock>,
): TextPlace | undefined {
  const now = block && blocks.get(block);
  if (Number.isNaN(by) || (block && !now)) return undefined;
  return {
    uri,
    span: moved(span, by),
    text,
    ...(now ? { block: now } : {}),
    ...(value ? { value: moved(value, by) } : {}),
  };
}

const moved = ({ start, end }: Span, by: number): Span => ({ start: start + by, end: end + by });

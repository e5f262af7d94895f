import type { BoundBlock, BoundProperty, Declaration, Match, Reference } from '../bound/bound-file.js';
import { patternUse } from '../schema/pattern-block.js';
import type { DraftLine, FileShape } from './draft.js';

/** Gives what a line came to before an edit, as it would come out now; `undefined` where it must be read anew. */
export type Earlier = (line: DraftLine) => Match | undefined;

/** Nothing is known from before. */
export const nothingEarlier: Earlier = () => undefined;

/**
 * What may be kept of a file that was bound before an edit. A line means the same as before where its own text is
 * the same, and everything that a line can ask its surroundings about: names and their kinds, the parts of
 * vehicles, what calculated values measure. Where any of that is another, nothing is kept.
 *
 * @param before bound; all that it sees in other files must still be the same
 */
export function earlier(before: FileShape, now: FileShape): Earlier {
  if (!sameList(namesOf(before), namesOf(now))) return nothingEarlier;
  const targets = new Map(before.declarations.map((d, i) => [d, now.declarations[i]]));
  const lines = new Map<DraftLine | BoundProperty, DraftLine | BoundProperty>();
  pair(before.blocks, now.blocks, before.text, now.text, lines);
  return (line) => {
    const old = lines.get(line);
    // A problem may speak of places elsewhere in the file.
    if (!old?.match || old.match.problems.length > 0) return undefined;
    return movedMatch(old.match, line.span.start - old.span.start, targets);
  };
}

const sameList = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((x, i) => x === b[i]);

/** All that lines can ask about, in order: what is named, and what decides the meaning of names. */
function namesOf({ blocks, lets, uses, text }: FileShape): readonly string[] {
  const names = uses.map((u) => `use ${u.target}`);
  const line = (p: BoundProperty) => names.push(text.slice(p.span.start, p.span.end));
  const walk = (block: BoundBlock): void => {
    // The title of a plan is asked for by nobody.
    const { schema, name, bodySpan, headSpan, titleSpan } = block;
    const head = titleSpan ? '' : text.slice(block.keywordSpan.end, headSpan.end);
    names.push(`${schema.keyword} ${name} ${head} ${bodySpan ? '{' : ''}`);
    for (const p of block.properties)
      if (p.schema.key === 'let' || p.schema === patternUse || schema.keyword === 'exercise') line(p);
    block.blocks.forEach(walk);
    names.push('}');
  };
  lets.forEach(line);
  blocks.forEach(walk);
  return names;
}

/** Finds for each line now the same line before: in the block at the same place, with the same text. */
function pair(
  before: readonly BoundBlock[],
  now: readonly BoundBlock[],
  textBefore: string,
  textNow: string,
  into: Map<DraftLine | BoundProperty, DraftLine | BoundProperty>,
): void {
  for (const [i, block] of now.entries()) {
    const old = before[i];
    if (!old) continue;
    for (const [j, line] of block.properties.entries()) {
      const was = textNow.slice(line.span.start, line.span.end);
      const same = (p: BoundProperty | undefined): p is BoundProperty =>
        p?.schema === line.schema && textBefore.slice(p.span.start, p.span.end) === was;
      const found = same(old.properties[j]) ? old.properties[j] : old.properties.find(same);
      if (found) into.set(line, found);
    }
    pair(old.blocks, block.blocks, textBefore, textNow, into);
  }
}

type Targets = ReadonlyMap<Declaration, Declaration | undefined>;

/** The same match further on in the text, its names pointing at what is declared now. */
function movedMatch(match: Match, by: number, targets: Targets): Match {
  if (by === 0 && match.references.length === 0) return match;
  const references = match.references.map((r): Reference => {
    const target = r.target && (targets.get(r.target) ?? r.target);
    return { ...r, span: movedSpan(r.span, by), target };
  });
  const moved = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map(moved);
    // What a line yields holds the very references that it lists.
    const listed = 'target' in value ? match.references.indexOf(value as Reference) : -1;
    if (listed >= 0) return references[listed];
    const copy: Record<string, unknown> = {};
    const of = value as Record<string, unknown>;
    for (const key in of) {
      if (key === 'target') copy[key] = targets.get(of[key] as Declaration) ?? of[key];
      else if ((key === 'start' || key === 'end') && typeof of[key] === 'number') copy[key] = of[key] + by;
      else copy[key] = key === 'unit' && isUnit(of[key]) ? of[key] : moved(of[key]);
    }
    return copy;
  };
  return {
    values: moved(match.values) as Match['values'],
    pieces: moved(match.pieces) as Match['pieces'],
    references,
    problems: [],
  };
}

const movedSpan = <S extends { readonly start: number; readonly end: number }>(span: S, by: number): S => ({
  ...span,
  start: span.start + by,
  end: span.end + by,
});

/** Units are shared by all texts, and compared as they are. */
const isUnit = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'spellings' in value;

import { count, name as nameHole } from '@cribwright/messages';
import type { Part } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { problem } from '../problems/problem.js';
import { partForms, partProperties } from '../schema/part.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';
import { notInPlan } from './not-in-plan.js';
import { sideways } from './sideways.js';
import { usualPoint } from './stiffness.js';

/** A 53 ft trailer has about fifty. */
const mostMembers = 300;

/** A part of a vehicle, from its own block and those that it inherits from, nearest first. */
export function partOf(
  w: Lowering,
  vehicle: string,
  blocks: readonly BoundBlock[],
  keyword: keyof typeof partForms,
): Part | undefined {
  const own = blocks[0];
  if (own?.name === undefined) return undefined;
  const name = own.name;
  const ref = { element: vehicle, property: name };
  w.place(ref, own.uri, own.headSpan, { block: own });
  const uriOf = (said: { block: BoundBlock } | undefined) => said?.block.uri ?? own.uri;
  const before = w.misses;
  const runs = w.propertyOf(blocks, partProperties.runs);
  const at = w.propertyOf(blocks, partProperties.at);
  const spacing = w.propertyOf(blocks, partProperties.spacing);
  const high = w.propertyOf(blocks, partProperties.height);
  const extent = w.interval(runs?.values.extent, at0, uriOf(runs), 'length');
  const back = w.number(at?.values.back, at0, uriOf(at), 'length');
  const height = w.interval(high?.values.height, at0, uriOf(high), 'length');
  const every = w.number(spacing?.values.spacing, at0, uriOf(spacing), 'length');
  const from = keyword === 'points' ? back : extent?.low;
  const to = keyword === 'points' ? back : extent?.high;
  if (from === undefined || to === undefined || !height || (keyword === 'joists' && !(every && every > 0))) {
    w.report(notInPlan(own.headSpan, `part ${name}`), own.uri);
    return undefined;
  }
  const members = keyword === 'joists' && every ? Math.floor((to - from) / every) + 1 : 0;
  if (members > mostMembers) {
    w.report(
      problem('part-too-many', own.headSpan, {
        part: nameHole(name),
        count: count(members),
        most: count(mostMembers),
      }),
      own.uri,
    );
    return undefined;
  }
  const bear = w.propertyOf(blocks, partProperties.bear);
  const not = w.propertyOf(blocks, partProperties.notBear);
  const mayBear =
    bear !== undefined && (not === undefined || blocks.indexOf(bear.block) < blocks.indexOf(not.block));
  const remark = mayBear ? bear?.values.remark?.text : not?.values.remark?.text;
  const rated = w.propertyOf(blocks, partProperties.rating);
  const rating = w.number(rated?.values.rating, at0, uriOf(rated), 'force');
  const carries = carriesOf(w, blocks);
  const wide = w.propertyOf(blocks, partProperties.width);
  const deep = w.propertyOf(blocks, partProperties.depth);
  const width = w.number(wide?.values.width, at0, uriOf(wide), 'length') ?? 0.0762;
  const depth = w.number(deep?.values.depth, at0, uriOf(deep), 'length') ?? 0.1016;
  const offsets = offsetsOf(w, blocks);
  const moves = w.propertyOf(blocks, partProperties.moves) !== undefined;
  // What is usual may be looser than what the line says that could not be read.
  if (w.misses !== before) {
    w.report(notInPlan(own.headSpan, `part ${name}`), own.uri);
    return undefined;
  }
  return {
    id: name,
    name: blocks.find((b) => b.title !== undefined)?.title ?? name,
    form: partForms[keyword],
    from,
    to,
    ...(keyword === 'joists' && every !== undefined ? { spacing: every } : {}),
    offsets,
    height,
    width,
    depth,
    mayBear,
    ...(remark === undefined
      ? mayBear || not
        ? {}
        : { remark: 'The plan does not say that it may bear.' }
      : { remark }),
    moves,
    ...(rating === undefined ? {} : { rating }),
    ...(carries ? { carries } : {}),
    sources: sourcesOf(w, blocks),
    ref,
  };
}

/** Where each number comes from: as its own line says, else as its block does, else as the vehicle does. */
function sourcesOf(w: Lowering, blocks: readonly BoundBlock[]): NonNullable<Part['sources']> {
  const { height, width, rating, carries } = partProperties;
  const of = (line: typeof height | typeof width | typeof rating | typeof carries) => {
    const said = w.propertyOf(blocks, line as typeof height);
    return said && w.source(said.values, [said.block]);
  };
  const found = { height: of(height), width: of(width), rating: of(rating), carries: of(carries) };
  return Object.fromEntries(Object.entries(found).filter(([, source]) => source !== undefined));
}

function carriesOf(w: Lowering, blocks: readonly BoundBlock[]): Part['carries'] | undefined {
  const said = w.propertyOf(blocks, partProperties.carries);
  if (!said) return undefined;
  const { empty, stiffness, raised } = said.values;
  const emptyLoad = w.interval(empty, at0, said.block.uri, 'force');
  return {
    stiffness: w.number(stiffness, at0, said.block.uri, 'stiffness') ?? usualPoint,
    down: raised !== true,
    ...(emptyLoad ? { emptyLoad } : {}),
  };
}

/** From the driver side to the passenger side. One length means as much to each side. */
function offsetsOf(w: Lowering, blocks: readonly BoundBlock[]): readonly number[] {
  const said = w.propertyOf(blocks, partProperties.offset);
  if (!said || said.values.centerd) return [0];
  const one = w.number(said.values.offset, at0, said.block.uri, 'length');
  if (one !== undefined) return one === 0 ? [0] : [-one, one];
  const each = said.values.sides?.flatMap((s) => {
    const offset = w.number(s.offset, at0, said.block.uri, 'length');
    return offset === undefined ? [] : [sideways(s.side.text, offset)];
  });
  return each && each.length > 0 ? each.sort((a, b) => a - b) : [0];
}

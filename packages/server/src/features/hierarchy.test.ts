import { fleet, pairs, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { incoming, outgoing, prepareCalls } from './call-hierarchy.js';
import { prepare, subtypes, supertypes } from './type-hierarchy.js';

const using = trailerPlan
  .replace('use "fleet', 'use "pairs.crib"\nuse "fleet')
  .replace('\n  steps', '\n  PairUnder North(rail = trailer rail, reach = 30 ft)\n\n  steps');
const others = { 'fleet.crib': fleet, 'pairs.crib': pairs };

it('goes up and down from a type, into the library and across files', async () => {
  const { desk, file, offset } = await atCursor(
    trailerPlan.replace(': CountyTrailer', ': County<|>Trailer'),
    others,
  );
  const [item] = prepare(desk, file, offset);
  if (!item) throw new Error('nothing prepared');
  expect((await supertypes(desk, item)).map((i) => i.name)).toEqual(['VanTrailer53']);
  expect((await subtypes(desk, item)).map((i) => i.name)).toEqual(['CountyReefer']);
  const [above] = await supertypes(desk, item);
  expect(above && (await supertypes(desk, above)).map((i) => i.name)).toEqual(['SemiTrailer']);
});

it('starts from a vehicle at its type', async () => {
  const { desk, file, offset } = await atCursor(
    trailerPlan.replace('chock  trailer', 'chock  trai<|>ler'),
    others,
  );
  expect(prepare(desk, file, offset).map((i) => i.name)).toEqual(['CountyTrailer']);
});

it('tells which plans use a pattern', async () => {
  const { desk, file, offset } = await atCursor(using.replace('PairUnder', 'Pair<|>Under'), others);
  const [item] = prepareCalls(desk, file, offset);
  if (!item) throw new Error('nothing prepared');
  expect(item.uri).toBe('memory:/pairs.crib');
  expect((await incoming(desk, item)).map((c) => [c.from.name, c.fromRanges.length])).toEqual([
    ['Trailer by the scale house', 1],
  ]);
});

it('tells which patterns a plan uses', async () => {
  const { desk, file, offset } = await atCursor(using.replace('ground {', 'gro<|>und {'), others);
  const [item] = prepareCalls(desk, file, offset);
  if (!item) throw new Error('nothing prepared');
  expect((await outgoing(desk, item)).map((c) => c.to.name)).toEqual(['PairUnder']);
});

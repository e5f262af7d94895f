import { applyChanges } from '@cribwright/workspace/internal';
import { fleet } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { spanOf } from '../context/positions.js';
import { contextOf } from '../testing/context-of.js';
import { editsForRenames } from './will-rename-files.js';

const files = {
  'fleet/yard.crib': fleet,
  'plans/beside.crib': 'use "library/vehicles.crib"\nuse "../fleet/yard.crib"\n',
  'plans/above.crib': 'use "fleet/yard.crib"\n',
  'fleet/more.crib': 'use "yard.crib"\n',
};

/** The files that change when one is moved. */
async function moving(from: string, to: string): Promise<Record<string, string>> {
  const desk = contextOf(files);
  const edit = await editsForRenames(desk, [{ oldUri: `memory:/${from}`, newUri: `memory:/${to}` }]);
  const after: Record<string, string> = {};
  for (const [uri, edits] of Object.entries(edit?.changes ?? {})) {
    const home = desk.workspace.bound(uri);
    if (!home) throw new Error('not read');
    const spans = edits.map((e) => ({ span: spanOf(home, e.range), text: e.newText }));
    after[uri.replace('memory:/', '')] = applyChanges(home.text, spans);
  }
  return after;
}

it('changes every use of a file that gets another name, each said as it was', async () => {
  expect(await moving('fleet/yard.crib', 'fleet/trailers.crib')).toEqual({
    'plans/beside.crib': 'use "library/vehicles.crib"\nuse "../fleet/trailers.crib"\n',
    'plans/above.crib': 'use "fleet/trailers.crib"\n',
    'fleet/more.crib': 'use "trailers.crib"\n',
  });
});

it('changes what a file uses when it moves itself', async () => {
  expect(await moving('fleet/more.crib', 'plans/more.crib')).toEqual({
    'fleet/more.crib': 'use "../fleet/yard.crib"\n',
  });
});

it('changes nothing for a file that nobody uses', async () => {
  expect(await moving('plans/above.crib', 'plans/renamed.crib')).toEqual({});
});

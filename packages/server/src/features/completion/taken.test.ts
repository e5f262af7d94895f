import { english } from '@cribwright/messages/testing';
import { describe, expect, it } from 'vitest';
import type { CompletionItem, TextEdit } from 'vscode-languageserver';
import { spanOf } from '../../context/positions.js';
import { atCursor, contextOf } from '../../testing/context-of.js';
import { completionsAt } from './completion.js';

/** What a snippet leaves where nobody types over its stops. */
const typed = (snippet: string): string =>
  snippet
    .replace(/\$\{\d+\|((?:\\.|[^,|\\])*)[^}]*\|\}/g, '$1')
    .replace(/\$\{\d+:((?:\\.|[^}\\])*)\}/g, '$1')
    .replace(/\\([\\$},|])/g, '$1');

/** What is wrong with a file after a suggestion was taken as it is. */
async function afterTaking(marked: string, pick: (item: CompletionItem) => boolean): Promise<string[]> {
  const { desk, file, offset } = await atCursor(marked);
  const said: string[] = [];
  for (const item of (await completionsAt(desk, file, offset)).filter(pick)) {
    const main = item.textEdit as TextEdit;
    const changes = [{ ...main, newText: typed(main.newText) }, ...(item.additionalTextEdits ?? [])]
      .map(({ range, newText }) => ({ ...spanOf(file, range), newText }))
      .sort((a, b) => b.start - a.start);
    const text = changes.reduce((t, c) => t.slice(0, c.start) + c.newText + t.slice(c.end), file.text);
    const after = await contextOf({ 'plan.crib': text }).checked('memory:/plan.crib');
    const errors = (after?.problems ?? []).filter((p) => p.source === 'text' && p.severity === 'danger');
    said.push(...errors.map((p) => `${item.label}: ${english(p.message)}`));
  }
  return said;
}

const plan = (inside: string) => `use "library/vehicles.crib"
use "library/gear.crib"

plan "Van trailer" {
  ground { surface asphalt; grade 0 % }
  vehicle tractor : DayCabTractor {}
  strut S1 : Strut4to8ft { head tractor frame near 6 ft, driver side; base 4 ft out }
  strut S2 : Strut4to8ft { head tractor frame near 6 ft, passenger side; base 4 ft out }
  crib A { timber Fir4x4 24 in long; layout 2 by 2; courses 3; at 10 ft; captures frame }
  ${inside}
}
`;

describe('a suggestion that is taken as it is', () => {
  it('names what the plan has, in every block and line of a plan', async () => {
    // What comes by a cache of the author's own is his to name.
    const own = ['responding', 'ground', 'steps'];
    expect(await afterTaking(plan('<|>'), ({ label }) => !own.includes(label))).toEqual([]);
  });

  it('brings the use line of a type that the library has', async () => {
    const empty = 'plan "First" {\n  ground { surface asphalt; grade 0 % }\n  <|>\n}\n';
    expect(await afterTaking(empty, ({ label }) => label === 'vehicle')).toEqual([]);
    const typing = empty.replace('<|>', 'vehicle trailer : <|> {}');
    expect(await afterTaking(typing, ({ label }) => label === 'VanTrailer53')).toEqual([]);
    expect(await afterTaking('<|>\n', ({ label }) => label === 'vehicle type')).toEqual([]);
  });

  it('begins a value at the top of a file with a plain one', async () => {
    expect(await afterTaking('<|>\n', ({ label }) => label === 'let')).toEqual([]);
  });

  it('gives a new crib a name of its own', async () => {
    const { desk, file, offset } = await atCursor(plan('<|>'));
    const crib = (await completionsAt(desk, file, offset)).find((i) => i.label === 'crib');
    expect(crib?.textEdit?.newText).toMatch(/^crib \$\{1:A2\} \{/);
  });

  it('takes the place of the number that is being typed', async () => {
    const { desk, file, offset } = await atCursor(plan('crib B { at 2<|> }'));
    for (const item of await completionsAt(desk, file, offset)) {
      const { range } = item.textEdit as TextEdit;
      expect(spanOf(file, range)).toEqual({ start: offset - 1, end: offset });
    }
  });

  it('lets no type extend itself', async () => {
    const { desk, file, offset } = await atCursor('vehicle type Ours : <|> { length 40 ft }\n');
    const labels = (await completionsAt(desk, file, offset)).map((i) => i.label);
    expect(labels).toContain('VanTrailer53');
    expect(labels).not.toContain('Ours');
  });
});

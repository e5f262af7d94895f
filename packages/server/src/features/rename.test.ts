import { applyChanges } from '@cribwright/workspace/internal';
import { fleet, pairs, trailerPlan } from '@cribwright/workspace/testing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ResponseError } from 'vscode-languageserver';
import { spanOf } from '../context/positions.js';
import { atCursor, contextOf } from '../testing/context-of.js';
import { prepareRename, renameAt } from './rename.js';

const others = { 'fleet.crib': fleet, 'second.crib': trailerPlan };
const at = (from: string, to: string) => atCursor(trailerPlan.replace(from, to), others);

/** The files after a rename. */
async function renamed(from: string, to: string, name: string): Promise<Record<string, string>> {
  const { desk, file, offset } = await at(from, to);
  const { changes = {} } = await renameAt(desk, file, offset, name);
  const texts: Record<string, string> = { ...others, 'plan.crib': file.text };
  for (const [uri, edits] of Object.entries(changes)) {
    const home = desk.workspace.bound(uri);
    if (!home) throw new Error(`${uri} was not read`);
    const spans = edits.map((e) => ({ span: spanOf(home, e.range), text: e.newText }));
    texts[uri.replace('memory:/', '')] = applyChanges(home.text, spans);
  }
  return texts;
}

it('changes a type in every file that uses it', async () => {
  const after = await renamed('CountyTrailer', 'County<|>Trailer', 'YardTrailer');
  expect(Object.values(after).join('\n')).not.toContain('CountyTrailer');
  expect(after['second.crib']).toContain('vehicle trailer : YardTrailer');
});

it('changes a crib in its own plan only', async () => {
  const after = await renamed('crib A', 'crib <|>A', 'North');
  expect(after['plan.crib']).toContain('build  North');
  expect(after['second.crib']).toBe(trailerPlan);
});

it('says what can be renamed, and what it is called now', async () => {
  const { desk, file, offset } = await at('build  A', 'build  <|>A');
  expect(prepareRename(desk, file, offset)).toMatchObject({
    placeholder: 'A',
    range: { start: { line: 22 } },
  });
});

describe('refuses', () => {
  it.each(['', '2nd', 'two words', 'A"', 'x{', '7'])('%j as a name', async (name) => {
    const { desk, file, offset } = await at('crib A', 'crib <|>A');
    await expect(renameAt(desk, file, offset, name)).rejects.toThrow('cannot be a name');
  });
  it('a name that the tool brought', async () => {
    const { desk, file, offset } = await at('Fir4x4', 'Fir<|>4x4');
    expect(() => prepareRename(desk, file, offset)).toThrow('comes with the tool');
  });
  it('a place without a name', async () => {
    const { desk, file, offset } = await at('36,000', '36,<|>000');
    expect(() => prepareRename(desk, file, offset)).toThrow('no name here');
  });
  it('a name that is taken', async () => {
    const { desk, file, offset } = await at('crib A', 'crib <|>A');
    await expect(renameAt(desk, file, offset, 'trailer')).rejects.toThrow('Choose another');
  });
});

describe('never breaks a plan', () => {
  const own = `${fleet}
vehicle type YardCar {
  length 14 ft
  rails sill "sill" {
    runs    4 ft to 10 ft
    offset  30 in
    height  8 in
    may bear
  }
}
`;
  const plan = trailerPlan.replace('use "fleet', 'use "pairs.crib"\nuse "fleet').replace(
    '\n  steps',
    `
  let back = 12 ft
  vehicle car : YardCar {
    at  30 ft, passenger side 20 ft
  }
  PairUnder North(rail = trailer rail, reach = back + 2 ft)
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    courses   2
    at        37 ft, passenger side 20 ft
    captures  car sill
  }

  steps`,
  );
  const files = { 'plan.crib': plan, 'fleet.crib': own, 'pairs.crib': pairs };
  const words = [
    ...new Set(
      `${plan} ${pairs} ${own} height at to from in ft lb center joists near under foot head safe let use of`.match(
        /[A-Za-z_]\w*/g,
      ),
    ),
  ];
  const name = fc.oneof(fc.constantFrom(...words), fc.stringMatching(/^[A-Za-z_][A-Za-z0-9_]{0,8}$/));

  it('renames every kind of name there', async () => {
    const desk = contextOf(files);
    const kinds = (await desk.everyFile()).flatMap((f) => f.declarations.map((d) => d.kind));
    expect(new Set(kinds)).toEqual(
      new Set(['vehicle', 'crib', 'value', 'pattern use', 'pattern', 'parameter', 'vehicle type', 'part']),
    );
  });

  it('either refuses, or leaves every file with the same problems and figures', async () => {
    const before = await outcome(files);
    const desk = contextOf(files);
    const all = (await desk.everyFile()).flatMap((file) => file.declarations.map((d) => ({ file, d })));
    let done = 0;
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...all), name, async ({ file, d }, newName) => {
        let changes: Awaited<ReturnType<typeof renameAt>>['changes'];
        try {
          ({ changes } = await renameAt(desk, file, d.nameSpan.start, newName));
        } catch (refusal) {
          expect(refusal).toBeInstanceOf(ResponseError);
          return;
        }
        done++;
        const after: Record<string, string> = { ...files };
        for (const [uri, edits] of Object.entries(changes ?? {})) {
          const home = desk.workspace.bound(uri);
          if (!home) throw new Error(`${uri} was not read`);
          const spans = edits.map((e) => ({ span: spanOf(home, e.range), text: e.newText }));
          after[uri.replace('memory:/', '')] = applyChanges(home.text, spans);
        }
        expect(await outcome(after)).toEqual(before);
      }),
      { numRuns: 40 },
    );
    // A property that refuses everything would hold, and say nothing.
    expect(done).toBeGreaterThan(5);
  });
});

/** What is wrong with each file, and how each plan is judged; names left out. */
async function outcome(files: Record<string, string>) {
  const desk = contextOf(files);
  return Promise.all(
    Object.keys(files).map(async (name) => {
      const checked = await desk.checked(`memory:/${name}`);
      return {
        name,
        codes: checked?.problems.map((p) => p.code).sort(),
        heights: checked?.plans.flatMap((p) => p.analysis.supports.map((s) => s.figures.height?.value)),
      };
    }),
  );
}

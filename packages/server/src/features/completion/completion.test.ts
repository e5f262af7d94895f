import { applyChanges } from '@cribwright/workspace/internal';
import { fleet, pairs, trailerPlan } from '@cribwright/workspace/testing';
import { describe, expect, it } from 'vitest';
import { CompletionItemKind } from 'vscode-languageserver';
import { spanOf } from '../../context/positions.js';
import { relative } from '../../context/relative-path.js';
import { atCursor } from '../../testing/context-of.js';
import { completionsAt } from './completion.js';

const others = { 'fleet.crib': fleet, 'pairs.crib': pairs };
async function offered(marked: string, asked = true, locale: 'en' | 'es' = 'en') {
  const { desk, file, offset } = await atCursor(marked, others, { locale });
  return completionsAt(desk, file, offset, asked);
}
const labels = async (marked: string, asked = true) => (await offered(marked, asked)).map((i) => i.label);
/** The sample with a line of its own for the cursor, inside the crib. */
const inCrib = (line: string) => trailerPlan.replace('    courses   14', `    ${line}\n    courses   14`);

describe('at the start of a line', () => {
  it('offers what a crib may still say, and nothing that it said', async () => {
    const found = await labels(inCrib('<|>'));
    expect(found).toEqual(expect.arrayContaining(['base', 'overhang', 'wedges', 'stands on']));
    expect(found).not.toContain('courses');
    expect(found).not.toContain('plan');
  });
  it('offers blocks of a plan with their inside', async () => {
    const found = await offered(trailerPlan.replace('\n  steps', '\n  <|>\n  steps'));
    const crib = found.find((i) => i.label === 'crib');
    expect(crib?.insertTextFormat).toBe(2);
    expect(crib?.textEdit?.newText).toContain('captures');
  });
  it('says what lines and blocks mean in the language of the reader', async () => {
    for (const [marked, label] of [
      [inCrib('<|>'), 'overhang'],
      [trailerPlan.replace('\n  steps', '\n  <|>\n  steps'), 'crib'],
      [trailerPlan.replace(/(\n {2}steps[\s\S]*?)(\n {2}\})/, '$1\n    <|>$2'), '3'],
    ] as const) {
      const [english, spanish] = await Promise.all(
        (['en', 'es'] as const).map(async (locale) => {
          const item = (await offered(marked, true, locale)).find((i) => i.label === label);
          // Without the example, which is the same in both languages.
          return JSON.stringify(item?.documentation).split('```')[0] ?? '';
        }),
      );
      expect(english, label).toMatch(/ (the|of|by) /);
      expect(spanish, label).toMatch(/ (el|la|de|con) /);
      expect(spanish, label).not.toMatch(/ (the|of|by) /);
    }
  });
  it('offers plans and types at the top of a file', async () => {
    expect(await labels(`<|>\n${trailerPlan}`)).toEqual(
      expect.arrayContaining(['use', 'plan', 'vehicle type', 'policy']),
    );
  });
  it('goes on with a key of several words', async () => {
    expect(await labels(inCrib('stands <|>'))).toContain('stands on');
  });
  it('comes up by a key or a letter, not by a space', async () => {
    expect(await labels(inCrib('<|>'), false)).toEqual([]);
  });
});

describe('by kind', () => {
  it('offers timbers where a timber is due, and nothing else that has a name', async () => {
    const found = await labels(trailerPlan.replace('Fir4x4 24 in long', '<|>'));
    expect(found).toContain('Fir4x4');
    expect(found).not.toContain('trailer');
    expect(found).not.toContain('A');
  });
  it('offers vehicle types after the colon, its own files first', async () => {
    const found = await offered(trailerPlan.replace(': CountyTrailer', ': <|>'));
    const names = found.map((i) => i.label);
    expect(names).toEqual(expect.arrayContaining(['CountyTrailer', 'VanTrailer53']));
    expect(names).not.toContain('Fir4x4');
    const order = (label: string) => found.find((i) => i.label === label)?.sortText ?? '';
    expect(order('CountyTrailer') < order('VanTrailer53')).toBe(true);
  });
  it('offers the parts of the vehicle that are there to be captured', async () => {
    expect(await labels(trailerPlan.replace('captures  rail', 'captures  <|>'))).toEqual(
      expect.arrayContaining(['rail', 'joists']),
    );
  });
  it('offers supports and actions in a step', async () => {
    expect(await labels(trailerPlan.replace('build  A', 'build <|>'))).toContain('A');
    expect(await labels(trailerPlan.replace('2  build  A ', '2  <|>'))).toEqual(
      expect.arrayContaining(['build', 'chock']),
    );
  });
  it('offers the few words of a choice', async () => {
    expect(await labels(inCrib('base <|>'))).toEqual(expect.arrayContaining(['open', 'solid']));
  });
  it('offers units after a number, those of the plan first', async () => {
    const found = (await offered(inCrib('overhang 4 <|>'))).filter((i) => i.kind === CompletionItemKind.Unit);
    expect(found.map((i) => i.label)).toEqual(expect.arrayContaining(['in', 'ft', 'mm']));
    expect(found.map((i) => i.label)).not.toContain('lb');
    const order = (label: string) => found.find((i) => i.label === label)?.sortText ?? '';
    expect(order('in') < order('mm')).toBe(true);
  });
  it('goes through a calculation: what has a figure, its part, the figure', async () => {
    const line = (words: string) =>
      labels(trailerPlan.replace('\n  steps', `\n  let gap = ${words}\n  steps`));
    const start = await line('<|>');
    expect(start).toEqual(expect.arrayContaining(['trailer', 'A']));
    expect(start).not.toContain('gap');
    expect(await line('trailer <|>')).toEqual(expect.arrayContaining(['rail', 'joists', 'height']));
    expect(await line('trailer rail <|>')).toEqual(expect.arrayContaining(['height', 'width']));
    expect(await line('trailer rail height - A <|>')).toEqual(expect.arrayContaining(['height']));
    expect(await line('3 <|>')).toEqual(expect.arrayContaining(['ft', 'in', 'lb']));
  });
  it('offers rules where a plan says what it expects', async () => {
    expect(await labels(trailerPlan.replace('\n  steps', '\n  expect <|>\n  steps'))).toEqual(
      expect.arrayContaining(['safe', 'crib-height']),
    );
  });
});

it('offers files after use: the library, and those of the folder', async () => {
  const found = await labels(trailerPlan.replace('use "fleet.crib"', 'use "<|>"'));
  expect(found).toEqual(expect.arrayContaining(['library/vehicles.crib', 'fleet.crib', 'pairs.crib']));
  expect(found).not.toContain('plan.crib');
});

it('offers nothing in a comment or in a title', async () => {
  expect(await labels(trailerPlan.replace('use "fleet.crib"', 'use "fleet.crib" // <|>'))).toEqual([]);
  expect(await labels(trailerPlan.replace('Trailer by', 'Trailer <|>by'))).toEqual([]);
});

it('puts a word in place of the part that is typed', async () => {
  const { desk, file, offset, text } = await atCursor(trailerPlan.replace('build  A', 'bui<|>'), others);
  const build = (await completionsAt(desk, file, offset)).find((i) => i.label === 'build');
  const edit = build?.textEdit;
  if (!edit || !('range' in edit)) throw new Error('no edit');
  expect(applyChanges(text, [{ span: spanOf(file, edit.range), text: edit.newText }])).toContain('2  build ');
});

it('says a path from the file where it stands', () => {
  expect(relative('file:///a/plans/', 'file:///a/caches/r%2012.crib')).toBe('../caches/r 12.crib');
  expect(relative('file:///a/plans/', 'file:///a/plans/x.crib')).toBe('x.crib');
});

describe('at every place of a plan', () => {
  it('answers, and what it offers is put in after what stands before', async () => {
    const { desk, file } = await atCursor(`<|>${trailerPlan}`, others);
    for (let offset = 0; offset <= file.text.length; offset++) {
      for (const item of await completionsAt(desk, file, offset)) {
        const edit = item.textEdit;
        if (!edit || !('range' in edit)) throw new Error(`${item.label} has no place`);
        const span = spanOf(file, edit.range);
        expect(span.start).toBeLessThanOrEqual(offset);
        expect(span.end).toBeGreaterThanOrEqual(offset);
        expect(file.text.slice(span.start, offset)).not.toMatch(/[\r\n]/);
      }
    }
  });
});

describe('where a word of the author is due', () => {
  it('offers an example to be typed over', async () => {
    expect(await labels(inCrib('courses <|>').replace('courses   14', ''))).toContain('4');
    expect(await labels(trailerPlan.replace('Fir4x4 24 in long', 'Fir4x4 <|>'))).toContain('3 ft 4 in');
    const [found] =
      (await offered(trailerPlan.replace('  steps', '  size up {\n    fuel <|>\n  }\n  steps'))) ?? [];
    expect(found?.label).toBe('"what was found"');
    expect(found?.textEdit?.newText).toMatch(/^"\$\{1:what was found\}"$/);
  });

  it('offers the number of the next step', async () => {
    expect(await labels(trailerPlan.replace('takes 5 min', 'takes 5 min\n    <|>'))).toEqual(['3']);
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { library } from '@cribwright/language';
import { formatted, gapEdits, textTokens } from '@cribwright/language/internal';
import { english } from '@cribwright/messages/testing';
import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contextOf } from '../../testing/context-of.js';
import { formatEdits } from './formatting.js';
import { editsOnType } from './on-type-formatting.js';

const examples = fileURLToPath(new URL('../../../../../examples', import.meta.url));
const files: Record<string, string> = Object.fromEntries(
  readdirSync(examples, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.crib'))
    .map((name) => [name.replaceAll('\\', '/'), readFileSync(`${examples}/${name}`, 'utf8')]),
);
const texts = {
  ...files,
  ...Object.fromEntries(Object.entries(library).map(([n, t]) => [`library ${n}`, t])),
};
const canonical = { insertSpaces: true, tabSize: 2 };

async function fileOf(text: string, name = 'plan.crib') {
  const desk = contextOf({ ...files, 'fleet.crib': fleet, [name]: text });
  const file = await desk.file(`memory:/${name}`);
  if (!file) throw new Error('not read');
  return { desk, file };
}
const format = async (text: string, name?: string): Promise<string> =>
  formatted((await fileOf(text, name)).file);

/** What a file comes to: its problems and its plans' analyses, without where things stand in the text. */
async function outcome(text: string, name?: string): Promise<string> {
  const { desk, file } = await fileOf(text, name);
  const checked = await desk.checked(file.uri);
  return JSON.stringify([
    checked?.problems.map((p) => [p.code, english(p.message)]),
    checked?.plans.map((p) => [p.plan, p.analysis]),
  ]);
}

it('has examples and a library to try', () => expect(Object.keys(texts).length).toBeGreaterThan(15));

describe.each(Object.entries(texts))('%s', (name, text) => {
  const path = name in files ? name : undefined;
  it('is laid out already', async () => {
    // Not so? Run: node --conditions=source --import tsx packages/server/build/format.ts examples packages/language/src/library
    expect(await format(text, path)).toBe(text);
  });
  it('is the same formatted twice as once', async () => {
    const once = await format(text, path);
    expect(await format(once, path)).toBe(once);
  });
  it('keeps every word', async () => {
    const { file } = await fileOf(text, path);
    const words = (t: string, f: typeof file): string[] => textTokens(t, f.statements).map((p) => p.text);
    const after = await fileOf(formatted(file), path);
    expect(words(after.file.text, after.file)).toEqual(words(text, file));
  });
});

describe.each(Object.entries(files).filter(([name]) => name.startsWith('plans/')))('%s', (name, text) => {
  it('comes to the same, laid out or pulled apart', async () => {
    const before = await outcome(text, name);
    expect(await outcome(await format(text, name), name)).toBe(before);
    const { file } = await fileOf(text, name);
    const seeds = fc.sample(fc.array(fc.nat(5), { minLength: 40, maxLength: 40 }), 1);
    for (const seed of seeds) {
      const messy = pulledApart(text, file, seed);
      expect(await outcome(messy, name)).toBe(before);
      // However it was pulled apart, it comes back to one layout: that of the text with the same line breaks.
      expect(await format(await format(messy, name), name)).toBe(await format(messy, name));
      expect(await outcome(await format(messy, name), name)).toBe(before);
    }
  });
});

/** The same text with other white space between its pieces, line breaks and joined pieces kept. */
function pulledApart(
  text: string,
  file: Awaited<ReturnType<typeof fileOf>>['file'],
  seed: readonly number[],
): string {
  let out = '';
  let from = 0;
  for (const [i, piece] of textTokens(text, file.statements).entries()) {
    const gap = text.slice(from, piece.start);
    const n = seed[i % seed.length] ?? 0;
    const breaks = gap.match(/\n/g)?.length ?? 0;
    out += breaks > 0 ? '\n'.repeat(breaks) + ' '.repeat(n) : gap === '' ? '' : ' '.repeat(n + 1);
    out += piece.text;
    from = piece.end;
  }
  return out + text.slice(from);
}

it('lays out steps in columns, by the schema', async () => {
  const text =
    'plan "x" {\nsteps {\n1 size up trailer crew 1 takes 2 min\n2 chock trailer both directions takes 1 min\n10 build A, B crew 4\n}\n}\n';
  expect(await format(text)).toBe(
    [
      'plan "x" {',
      '  steps {',
      '    1   size up  trailer                  crew 1  takes 2 min',
      '    2   chock    trailer both directions          takes 1 min',
      '    10  build    A, B                     crew 4',
      '  }',
      '}',
      '',
    ].join('\n'),
  );
});

it('keeps a file whose braces, quotes or comments do not close exactly as it is', async () => {
  for (const broken of [
    'plan "x" {\n ground {\n',
    'plan "x {\n}\n',
    '}\n  plan "x" {\n}\n',
    'plan "x" {\n}\n/* open\n   x',
  ])
    expect(await format(broken)).toBe(broken);
});

it('takes the indentation that the editor asks for', async () => {
  const { file } = await fileOf('plan "x" {\nground { surface asphalt }\n}\n');
  expect(formatted(file, { insertSpaces: false, tabSize: 4 })).toContain('\n\tground');
  expect(formatted(file, { insertSpaces: true, tabSize: 4 })).toContain('\n    ground');
});

it('changes white space only, in edits that do not touch one another', async () => {
  const { file } = await fileOf(trailerPlan.replace(/ {2,}/g, ' '));
  const edits = gapEdits(file, canonical);
  expect(edits.length).toBeGreaterThan(5);
  for (const [i, edit] of edits.entries()) {
    expect(file.text.slice(edit.start, edit.end)).toMatch(/^\s*$/);
    expect(edit.text).toMatch(/^\s*$/);
    expect(edit.start).toBeGreaterThanOrEqual(edits[i - 1]?.end ?? 0);
  }
});

it('keeps to a range', async () => {
  const { file } = await fileOf('ground {\n surface asphalt\n      grade 1 %\n}\n');
  const start = file.text.indexOf(' surface');
  expect(formatEdits(file, canonical, { start, end: start + 3 }).map((e) => e.range.start.line)).toEqual([0]);
});

describe('on type', () => {
  const typed = async (marked: string, ch: string) => {
    const offset = marked.indexOf('<|>');
    const { file } = await fileOf(marked.replace('<|>', ''));
    return { file, edits: editsOnType(file, offset, ch, canonical) };
  };
  it('lays out the block that a brace closes, and only that', async () => {
    const { edits } = await typed('plan "m" {\n ground {\n surface asphalt\n }<|>\n crib A {\n }\n}\n', '}');
    expect(edits.map((e) => e.range.end.line)).toEqual([1, 2, 3]);
  });
  it('lays out the line that was left, and leaves the new one to its writer', async () => {
    const { edits } = await typed('plan "m" {\n    ground { surface   asphalt }\n      <|>\n}\n', '\n');
    expect(new Set(edits.map((e) => e.range.end.line))).toEqual(new Set([1]));
  });
  it('does nothing while braces do not balance', async () => {
    expect((await typed('plan "m" {\n ground {\n }<|>\n', '}')).edits).toEqual([]);
  });
});

it.each(['\v', '\f', '\u0085', '\u2028', '\u2029'])(
  'keeps what stands after a comment that %j ends',
  async (line) => {
    const text = `// a note${line}${trailerPlan}`;
    const [before, after] = [await outcome(text), await outcome(await format(text))];
    expect(JSON.parse(before)[1]).toHaveLength(1);
    expect(after).toBe(before);
  },
);

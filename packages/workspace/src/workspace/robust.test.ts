import { readdirSync, readFileSync } from 'node:fs';
import { library } from '@cribwright/language';
import { vocabulary } from '@cribwright/language/internal';
import { english } from '@cribwright/messages/testing';
import { deepest } from '@cribwright/syntax/internal';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openWorkspace } from './open-workspace.js';

const uri = 'file:///alder-ridge/plans/any.crib';

/** Binds and checks a text as the server would. What comes back must fit the text, whatever it was. */
function read(text: string, others: ReadonlyMap<string, string> = new Map()) {
  const workspace = openWorkspace({
    files: { read: async (u) => others.get(u) },
    folders: ['file:///alder-ridge'],
  });
  workspace.put(uri, text, 1);
  const checked = workspace.check(uri);
  for (const p of checked.problems) {
    expect(english(p.message)).not.toMatch(/\{[a-z]+\}|undefined|NaN|\[object/i);
    expect(p.span.start).toBeGreaterThanOrEqual(0);
    expect(p.span.end).toBeLessThanOrEqual(text.length);
    expect(p.span.start).toBeLessThanOrEqual(p.span.end);
  }
  return checked;
}

const plans = new URL('../../../../examples/plans/', import.meta.url);
const examples = readdirSync(plans).map((f) => readFileSync(new URL(f, plans), 'utf8'));

describe('any text at all', () => {
  it('is read without a crash', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (text) => void read(text)),
      { numRuns: 150 },
    );
  });

  it('is read without a crash where it is made of the language’s own words', () => {
    const v = vocabulary();
    const words = [
      ...v.blocks,
      ...v.keys,
      ...v.words,
      ...v.choices,
      ...v.units,
      '{',
      '}',
      '\n',
      ',',
      ':',
      '(',
      ')',
      '=',
      '"x"',
      '12',
      '3 1/2',
      '4x4',
      'A',
      'trailer',
      '/*',
      '//',
      '±',
      '- ',
      '.',
      ';',
    ];
    const soup = fc.array(fc.constantFrom(...words), { maxLength: 120 }).map((w) => w.join(' '));
    fc.assert(
      fc.property(soup, (text) => void read(text)),
      { numRuns: 150 },
    );
  });

  it('is read without a crash where a piece of a good plan is missing', () => {
    const broken = fc
      .tuple(
        fc.constantFrom(...examples),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 80 }),
      )
      .map(([text, at, length]) => {
        const from = Math.floor(at * text.length);
        return text.slice(0, from) + text.slice(from + length);
      });
    fc.assert(
      fc.property(broken, (text) => void read(text)),
      { numRuns: 12 },
    );
  });

  it('is read without a crash where a plan breaks off', () => {
    const [text = ''] = examples;
    for (let at = 0; at < text.length; at += Math.ceil(text.length / 20)) read(text.slice(0, at));
  });
});

describe('a text made to hurt', () => {
  it('of a megabyte of braces gives messages, not a crash', () => {
    const codes = read('{'.repeat(1_000_000)).problems.map((p) => p.code);
    expect(codes).toContain('braces-too-deep');
    expect(codes).toContain('file-too-long');
    expect(codes.length).toBeLessThan(deepest + 10);
  });

  it('of words without end stops with one message', () => {
    const codes = read('a '.repeat(300_000)).problems.map((p) => p.code);
    expect(codes.filter((c) => c === 'file-too-long')).toHaveLength(1);
  });

  it('of parentheses without end is bounded', () => {
    const { problems } = read(`let a = ${'('.repeat(5_000)}1 in${')'.repeat(5_000)}`);
    expect(problems.length).toBeGreaterThan(0);
  });

  it('of one name declared ten thousand times says so, and in time', () => {
    const text = Array.from({ length: 10_000 }, () => 'cache A { staffing 4 }').join('\n');
    expect(read(text).problems.filter((p) => p.code === 'name-twice')).toHaveLength(9_999);
  });

  it('of a thousand values that hang on each other is bounded', () => {
    const text = Array.from({ length: 1_000 }, (_, i) => `let v${i} = v${i + 1} + 1 in`).join('\n');
    expect(read(`${text}\nlet v1000 = v0 + 1 in`).problems.length).toBeGreaterThan(0);
  });

  it('of a megabyte of line breaks, semicolons or comments is read in one walk', () => {
    for (const text of ['\n'.repeat(1_000_000), ';'.repeat(1_000_000), '/**/'.repeat(250_000)])
      expect(read(text).problems.length).toBeLessThan(3);
  });

  it('of plans without end is told where they are no longer checked', () => {
    const { problems, plans } = read(`${plan('')}\n`.repeat(251));
    const told = problems.filter((p) => p.code === 'too-many-plans');
    expect(told.map((p) => p.span.start)).toEqual([250 * (plan('').length + 1)]);
    expect(plans).toHaveLength(0);
  });

  it('of a sum without end gives a message, not a crash', () => {
    const { problems } = read(`let a = 1 ft${' + 1 ft'.repeat(20_000)}`);
    expect(problems.map((p) => p.code)).toContain('calculation-too-long');
  });

  it('of a list without end gives a message, not a crash', () => {
    const { problems } = read(plan(`vehicle v : V {}\nresponding ${'A, '.repeat(20_000)}A`));
    expect(problems.map((p) => p.code)).toContain('line-too-long');
  });

  it('of patterns used without end is read in time', () => {
    const pattern = 'pattern P(a: length) { crib C { at a; timber Fir4x4 24 in long; courses 3 } }';
    const uses = Array.from({ length: 3_000 }, (_, i) => `P Q${i}(a = 3 ft)`).join('\n');
    expect(read(`${pattern}\n${plan(uses)}`).problems.length).toBeGreaterThan(0);
  });

  it('of a word without end repeats no more of it than can be read', () => {
    const { problems } = read(`${'a'.repeat(1_000_000)} { }`);
    expect(problems.length).toBeGreaterThan(0);
    for (const p of problems) expect(english(p.message).length).toBeLessThan(1_000);
  });

  it('of counts and lengths that no timber has builds none of it', () => {
    const crib = (timber: string, layout: string, courses: string) =>
      plan(
        `ground { surface asphalt }\nvehicle v : VanTrailer53 {}\ncrib A { timber Fir4x4 ${timber} long; ` +
          `layout ${layout}; courses ${courses}; at 20 ft; captures rail }`,
      );
    for (const text of [
      crib('24 in', '1,000,000 by 2', '3'),
      crib('24 in', '2 by 2', '1,000,000'),
      crib('1,000,000 in', '2 by 2', '3'),
    ]) {
      const { problems } = read(`use "library/vehicles.crib"\n${text}`);
      expect(problems.map((p) => p.code)).toEqual(expect.arrayContaining(['too-large', 'not-in-plan']));
    }
  });
});

describe('files that use each other', () => {
  it('in a ring are read, and the ring is told', async () => {
    const others = new Map([
      ['file:///alder-ridge/a.crib', 'use "b.crib"\ncache A { staffing 1 }'],
      ['file:///alder-ridge/b.crib', 'use "c.crib"\ncache B { staffing 1 }'],
      ['file:///alder-ridge/c.crib', 'use "a.crib"\ncache C { staffing 1 }'],
    ]);
    const workspace = openWorkspace({
      files: { read: async (u) => others.get(u) },
      folders: ['file:///alder-ridge'],
    });
    await workspace.load('file:///alder-ridge/a.crib');
    const { problems } = workspace.check('file:///alder-ridge/a.crib');
    expect(english(problems.find((p) => p.code === 'use-cycle')?.message)).toContain(
      'a.crib → b.crib → c.crib → a.crib',
    );
  });

  it('by the hundreds are read up to a bound', async () => {
    let reads = 0;
    const files = {
      read: async (u: string) => {
        reads++;
        const n = Number(/f(\d+)\.crib$/.exec(u)?.[1] ?? 0);
        return Array.from({ length: 5 }, (_, i) => `use "f${n * 5 + i + 1}.crib"`).join('\n');
      },
    };
    const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
    await workspace.load('file:///alder-ridge/f0.crib');
    expect(reads).toBeLessThan(2_100);
    expect(workspace.bound('file:///alder-ridge/f0.crib')).toBeDefined();
  });

  it('by the thousands in one file are read up to a bound, and told', async () => {
    let reads = 0;
    const files = { read: async () => void reads++ };
    const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
    const text = Array.from({ length: 10_000 }, (_, i) => `use "f${i}.crib"`).join('\n');
    workspace.put('file:///alder-ridge/many.crib', text, 1);
    await workspace.load('file:///alder-ridge/many.crib');
    const { problems } = workspace.check('file:///alder-ridge/many.crib');
    expect(problems.filter((p) => p.code === 'use-too-many')).toHaveLength(1);
    expect(reads).toBeLessThanOrEqual(400);
  });

  it('in many layers, each using all of the next, are each read once and told where it is too deep', async () => {
    let reads = 0;
    const [layers, each] = [20, 4];
    const files = {
      read: async (u: string) => {
        reads++;
        const layer = Number(/l(\d+)-\d+\.crib$/.exec(u)?.[1] ?? 0);
        const uses = Array.from({ length: each }, (_, i) => `use "l${layer + 1}-${i}.crib"`);
        return layer < layers ? uses.join('\n') : '';
      },
    };
    const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
    await workspace.load('file:///alder-ridge/l0-0.crib');
    expect(reads).toBeLessThanOrEqual(1 + each * 18);
    const { problems } = workspace.check('file:///alder-ridge/l0-0.crib');
    expect(problems.filter((p) => p.code === 'use-too-many')).toHaveLength(each);
  });

  it('all of them each other, are read up to a bound of use lines, and told', async () => {
    let reads = 0;
    const all = Array.from({ length: 300 }, (_, i) => `use "f${i}.crib"`).join('\n');
    const files = {
      read: async () => {
        reads++;
        return all;
      },
    };
    const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
    await workspace.load('file:///alder-ridge/f0.crib');
    expect(reads).toBe(300);
    const { problems } = workspace.check('file:///alder-ridge/f0.crib');
    expect(problems.some((p) => p.code === 'use-too-many' && p.severity === 'danger')).toBe(true);
    expect(problems.some((p) => p.code === 'use-cycle')).toBe(true);
  });

  it('many that are not there are looked for up to a bound of use lines, and told', async () => {
    let reads = 0;
    const files = {
      read: async (u: string) => {
        reads++;
        const n = /\/f(\d+)\.crib$/.exec(u)?.[1];
        return n === undefined
          ? undefined
          : Array.from({ length: 100 }, (_, i) => `use "gone${n}-${i}.crib"`).join('\n');
      },
    };
    const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
    const text = Array.from({ length: 100 }, (_, i) => `use "f${i}.crib"`).join('\n');
    workspace.put('file:///alder-ridge/plan.crib', text, 1);
    await workspace.load('file:///alder-ridge/plan.crib');
    expect(reads).toBeLessThan(2_100);
    const { problems } = workspace.check('file:///alder-ridge/plan.crib');
    expect(problems.some((p) => p.code === 'use-too-many' && p.severity === 'danger')).toBe(true);
  });

  it.each([
    ['\ud800', 'use-unreadable'],
    ['a\udc00b', 'use-unreadable'],
    ['50 %', 'use-not-found'],
    ['%zz', 'use-not-found'],
    ['%80', 'use-not-found'],
    ['%2F..%2F', 'use-not-found'],
  ])('by a name with %j are told as not there, and break nothing', async (name, code) => {
    const asked: string[] = [];
    const files = {
      read: async (u: string) => {
        asked.push(u);
        return undefined;
      },
    };
    const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
    workspace.put('file:///alder-ridge/p.crib', `use "${name}.crib"`, 1);
    await workspace.load('file:///alder-ridge/p.crib');
    const { problems } = workspace.check('file:///alder-ridge/p.crib');
    expect(problems.map((p) => [p.code, p.severity])).toEqual([[code, 'danger']]);
    for (const uri of asked) expect(decodeURIComponent(uri)).toBe(`file:///alder-ridge/${name}.crib`);
  });

  it('that are there and are not read are told with the reason, and none farther up is taken for them', async () => {
    const words = {
      outside: 'leads outside this folder',
      'not a file': 'is not a file',
      'not text': 'is not UTF-8 text',
      'too large': 'is larger than 4 MB',
      'looping link': 'leads back to itself',
      'not permitted': 'no permission',
      failed: 'cannot be read',
    } as const;
    for (const [unreadable, said] of Object.entries(words)) {
      const files = {
        read: async (u: string) =>
          u.endsWith('/plans/x.crib')
            ? { unreadable: unreadable as keyof typeof words }
            : 'cache A { staffing 1 }',
      };
      const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
      workspace.put('file:///alder-ridge/plans/p.crib', 'use "x.crib"', 1);
      await workspace.load('file:///alder-ridge/plans/p.crib');
      const [problem, ...more] = workspace.check('file:///alder-ridge/plans/p.crib').problems;
      expect([problem?.code, problem?.severity, more]).toEqual(['use-unreadable', 'danger', []]);
      expect(english(problem?.message)).toContain(said);
    }
  });

  it('are read within the folder that is open, else within their own', async () => {
    const asked: (string | undefined)[] = [];
    const files = { read: async (_: string, within?: string) => void asked.push(within) };
    for (const folders of [['file:///alder-ridge'], []]) {
      const workspace = openWorkspace({ files, folders });
      workspace.put('file:///alder-ridge/plans/p.crib', 'use "x.crib"', 1);
      await workspace.load('file:///alder-ridge/plans/p.crib');
    }
    expect(asked).toEqual(['file:///alder-ridge', 'file:///alder-ridge', 'file:///alder-ridge/plans']);
  });

  it('outside the folder are never read', async () => {
    const asked: string[] = [];
    const files = {
      read: async (u: string) => {
        asked.push(u);
        return undefined;
      },
    };
    const workspace = openWorkspace({ files, folders: ['file:///alder-ridge'] });
    const paths = [
      '../x.crib',
      '../../etc/x.crib',
      '/etc/x.crib',
      'file:///etc/x.crib',
      'a/../../x.crib',
      '..\\x.crib',
      'http://x/y.crib',
    ];
    workspace.put('file:///alder-ridge/p.crib', paths.map((p) => `use "${p}"`).join('\n'), 1);
    await workspace.load('file:///alder-ridge/p.crib');
    expect(asked).toEqual([]);
    const codes = workspace.check('file:///alder-ridge/p.crib').problems.map((p) => p.code);
    expect(codes.filter((c) => c === 'use-outside')).toHaveLength(paths.length);
  });
});

it('finds nothing wrong with the bundled library', () => {
  const workspace = openWorkspace({ files: { read: async () => undefined }, folders: [] });
  const problems = Object.keys(library).flatMap((name) =>
    workspace.check(`cribwright:/library/${name}`).problems.map((p) => `${name}: ${english(p.message)}`),
  );
  expect(problems).toEqual([]);
});

const plan = (inside: string): string => `plan "x" {\n${inside}\n}`;

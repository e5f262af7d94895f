import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { describe, expect, it } from 'vitest';
import { fenced, plain } from '../../context/markdown.js';
import { atCursor } from '../../testing/context-of.js';
import { hoverAt } from './hover.js';

async function hovered(from: string, to: string, crib = '  crib A'): Promise<string> {
  const text = trailerPlan.replace('  crib A', crib).replace(from, to);
  const { desk, file, offset } = await atCursor(text, { 'fleet.crib': fleet });
  const found = await hoverAt(desk, file, offset);
  const contents = found?.contents;
  return contents && typeof contents === 'object' && 'value' in contents
    ? contents.value.replaceAll('\\', '')
    : '';
}

it('writes out the sum of a height and of what it may be, with sources', async () => {
  const text = await hovered('courses   14', 'cour<|>ses   14');
  expect(text).toContain('49 in');
  expect(text).toContain('16 in');
  expect(text).toContain('Source:');
});

it('gives a support its figures, wherever its name stands', async () => {
  const text = await hovered('build  A', 'build  <|>A');
  expect(text).toContain('crib A');
  expect(text).toContain('49 in');
});

it('says what a name stands for, in its author\u2019s own words, and where', async () => {
  const text = await hovered(': CountyTrailer', ': County<|>Trailer');
  expect(text).toContain('vehicle type CountyTrailer');
  expect(text).toContain("The county's own trailer.");
  expect(text).toContain('fleet.crib');
});

it('gives a place as each crew measures it', async () => {
  // A trailer of 53 ft, with its kingpin 3 ft back: 21 ft back is 32 ft forward from the rear.
  const text = await hovered('at        21 ft', 'a<|>t        18 ft behind kingpin');
  expect(text).toContain('21 ft back from the front');
  expect(text).toContain('32 ft forward from the rear');
  expect(text).toMatch(/ft.* ahead of axle \d/);
});

it('explains a line of a block', async () => {
  expect(await hovered('layout', 'lay<|>out')).toContain('layout 2 by 2');
});

it('gives a quantity in the other units', async () => {
  expect(await hovered('24 in long', '2<|>4 in long')).toMatch(/24 in is 610 mm/);
});

describe('a calculated value', () => {
  const sum =
    '  let back = 10 ft + 11 ft\n  let gap = trailer rail height - 2 * spare\n  let spare = 0.5 in\n';

  it('is told with its sum and its unit, where it is made and where it is used', async () => {
    const made = await hovered('  crib A', `${sum.replace('back', 'ba<|>ck')}\n  crib A`);
    expect(made).toContain('let back = 10 ft + 11 ft');
    expect(made).toContain('**back: 21 ft**  \n= 10 ft + 11 ft  \n_Source: stated in the plan_');
    const used = await hovered('at        21 ft', `at        b<|>ack`, `${sum}\n  crib A`);
    expect(used).toContain('**back: 21 ft**  \n= 10 ft + 11 ft');
  });

  it('names what goes into it, then puts in the numbers', async () => {
    // Rails of a van trailer in the library stand 40 in high; less twice half an inch: 39 in.
    const text = await hovered('  crib A', `${sum.replace('gap', 'ga<|>p')}\n  crib A`);
    expect(text).toMatch(/gap: 39 in\*\* +\n= trailer rail height - 2 \* spare +\n= 40 in - 2 \* 0\.5 in/);
  });

  it('says so where it cannot be known', async () => {
    const text = await hovered('  crib A', '  let a<|>ll = 4 ft / none\n  let none = 0\n\n  crib A');
    expect(text).toMatch(/all: not known/);
    expect(text).toContain('= 4 ft / 0');
  });

  it('that hangs on itself ends', async () => {
    expect(await hovered('  crib A', '  let o<|>ne = two + 1 in\n  let two = one\n\n  crib A')).toContain(
      'one: not known',
    );
  });

  it('of values that hang on each other by the hundreds is bounded', async () => {
    const chain = Array.from({ length: 60 }, (_, i) => `  let v${i} = v${i + 1} + v${i + 1}`).join('\n');
    const text = await hovered('  crib A', `${chain.replace('v0', 'v<|>0')}\n  let v60 = 0.5 in\n\n  crib A`);
    expect(text).toContain('= v1 + v1');
    expect(text).not.toContain('not known');
  });

  it('counts things without a unit, and weighs', async () => {
    expect(await hovered('  crib A', '  let n<|> = 3 + 4\n  crib A')).toContain('n: 7**');
    expect(await hovered('  crib A', '  let w<|> = 2,000 lb * 3 / 2\n  crib A')).toContain('w: 3,000 lb**');
  });

  it('at the top of another file is told too', async () => {
    const lines = 'let yard = 3 ft + base\nlet base = 4 ft\n';
    const { desk, file, offset } = await atCursor(
      trailerPlan
        .replace('use "fleet', 'use "yard.crib"\nuse "fleet')
        .replace('at        21 ft', 'at  ya<|>rd'),
      { 'fleet.crib': fleet, 'yard.crib': lines },
    );
    expect(JSON.stringify((await hoverAt(desk, file, offset))?.contents)).toContain('yard: 7 ft');
  });

  it('of a pattern is told for each use', async () => {
    const pattern = `pattern One(rail: part, reach: length) {
  let ha<|>lf = reach / 2
  crib P { timber Fir4x4 24 in long; layout 2 by 2; courses 6; at half, driver side 3 ft 4 in; captures rail }
}

plan`;
    const uses =
      'One East(rail = trailer rail, reach = 40 ft)\n  One West(rail = trailer rail, reach = 20 ft)';
    const text = await hovered('plan', pattern, `  ${uses}\n\n  crib A`);
    expect(text).toContain('East.half: 240 in');
    expect(text).toContain('West.half: 120 in');
  });
});

it('takes words of a plan as words, never as markup', () => {
  expect(plain('[x](command:evil) <img> `code` **b**')).toBe(
    '\\[x\\](command:evil) \\<img\\> \\`code\\` \\*\\*b\\*\\*',
  );
  expect(fenced('a ``` b')).toBe('````cribwright\na ``` b\n````');
});

it('leaves words that are no markup as they are, for editors that show the text raw', () => {
  expect(plain('14 × 3.5 in - 2 (49 in)')).toBe('14 × 3.5 in - 2 (49 in)');
  expect(plain('1. first')).toBe('1\\. first');
  expect(plain('# no title')).toBe('\\# no title');
});

it('traces what is worked out to its sources', async () => {
  const text = await hovered('courses   14', 'cour<|>ses   14');
  expect(text).toContain('policy Shipped');
});

it('says what a rule protects against, where a plan names it', async () => {
  const text = await hovered('\n  steps', '\n  expect crib-<|>height on A\n\n  steps');
  expect(text).toContain('cribwright:/rules/crib-height.md');
});

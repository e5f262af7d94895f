import type { Figure } from '@cribwright/messages';
import { wordsIn } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { crib, planOf, sedan, vanTrailer } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { inch } from '@cribwright/units';
import { openWorkspace } from '@cribwright/workspace';
import { describe, expect, it } from 'vitest';
import { drawn } from '../../packages/drawing/src/testing/drawn.js';

const print = (figure: Figure): string => wordsIn('en', 'us').value(figure);

describe('13 courses of 4x4 under 3 in of shims', () => {
  // 13 × 3.5 in = 45.5 in of courses; with the shims 48.5 in.
  const plan = planOf({
    vehicles: [{ ...vanTrailer, parts: vanTrailer.parts.map((p) => ({ ...p, height: at(50 * inch) })) }],
    cribs: [crib('A', 228 * inch, -42.75 * inch, { courses: 13, shims: 3 * inch, overhang: 4 * inch })],
  });
  const analysis = analyze(plan);
  const figures = analysis.supports[0]?.figures;

  it('have one height in the checks and in the Heights view', () => {
    expect(figures?.height && print(figures.height)).toBe('45.5 in');
    const heights = drawn(plan, analysis, { view: 'height limits', subject: 'crib/A' });
    expect(heights.words('point crib/A').join(' ')).toMatch(/^A: 45 1\/2 in, limit /);
  });

  it('and the drawing names the height with shims apart', () => {
    const close = drawn(plan, analysis, { view: 'crib', subject: 'crib/A' });
    expect(close.words('height')).toEqual(['45 1/2 in']);
    expect(close.words('height with shims')).toEqual(['48 1/2 in with shims']);
  });
});

describe('5 courses of 8x8, 7.5 in green where the policy says so', () => {
  const text = `use "library/vehicles.crib"
policy Green : Shipped {
  dressed size of 8x8 green
}
plan "Green timber" {
  policy Green
  ground { surface asphalt }
  vehicle trailer : VanTrailer53
  crib A {
    timber Fir8x8 36 in long
    layout 2 by 2
    courses 5
    at 20 ft, driver side 3 ft 6 in
    captures rail, joists
  }
  let high = A height
  let wide = A width
}
`;

  it('have one height in the checks, the drawings and calculations', async () => {
    const uri = 'file:///alder-ridge/green.crib';
    const workspace = openWorkspace({
      files: { read: async (u) => (u === uri ? text : undefined) },
      folders: ['file:///alder-ridge'],
      today: '2026-11-25',
      push: false,
    });
    await workspace.load(uri);
    const reply = workspace.check(uri).plans[0];
    if (reply === undefined) throw new Error('no plan was made');
    const { plan, analysis } = reply;
    const { height, width } = analysis.supports[0]?.figures ?? {};
    expect(height && print(height)).toBe('37.5 in');
    const value = (name: string) => workspace.valuesAt(uri, text.indexOf(`let ${name}`) + 4).map(print);
    expect(value('high')).toEqual(['37.5 in']);
    expect(value('wide')).toEqual([width && print(width)]);
    const heights = drawn(plan, analysis, { view: 'height limits', subject: 'crib/A' });
    expect(heights.words('point crib/A').join(' ')).toMatch(/^A: 37 1\/2 in, limit /);
    const close = drawn(plan, analysis, { view: 'crib', subject: 'crib/A' });
    expect(close.words('height')).toEqual(['37 1/2 in']);
    expect(drawn(plan, analysis, { view: 'side' }).words()).toContain('3 ft 1 1/2 in: A');
  });
});

it('draws the top of a car where the plan says that its crushed roof is', () => {
  const plan: Plan = planOf({ vehicles: [sedan], cribs: [crib('A', 0, 0, { captures: [] })] });
  const words = drawn(plan, analyze(plan), { view: 'side' }).words();
  expect(words).toContain('3 ft 4 in: top of car');
  expect(words.join()).not.toContain('4 ft 9 in');
});

function at(value: number) {
  return { low: value, high: value };
}

import type { Figure } from '@cribwright/messages';
import { calculationOf } from '@cribwright/messages/testing';
import { samplePlans } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyze } from './analyze.js';

const isFigure = (value: object): value is Figure => 'rounding' in value && 'source' in value;

/** Every figure anywhere in a result, those that others are worked out from among them. */
function figuresIn(value: unknown, into: Set<Figure>): Set<Figure> {
  if (typeof value !== 'object' || value === null) return into;
  if (isFigure(value)) {
    if (into.has(value)) return into;
    into.add(value);
  }
  for (const part of Object.values(value)) figuresIn(part, into);
  return into;
}

describe.each(Object.entries(samplePlans))('%s', (_name, plan) => {
  const figures = [...figuresIn(analyze(plan, { push: true, paper: true }), new Set())];

  it('says of each number that it works out how', () => {
    expect(figures.length).toBeGreaterThan(0);
    const bare = figures.filter(
      (f) => f.source.kind === 'computed' && (calculationOf(f)?.names ?? '') === '',
    );
    expect(bare.map((f) => f.label)).toEqual([]);
  });

  it('puts every input into the formula: no braces are left', () => {
    const open = figures.filter((f) =>
      /\{\w+\}/.test(`${calculationOf(f)?.names}${calculationOf(f)?.numbers}`),
    );
    expect(open.map((f) => calculationOf(f)?.names)).toEqual([]);
  });
});

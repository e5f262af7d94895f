import { workingsOf } from '@cribwright/engine';
import { english } from '@cribwright/messages/testing';
import { foot, lb, longStrut, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

type Ratings = readonly { readonly length: number; readonly load: number }[];
const rated = (ratings: Ratings) => ({
  ...trailerOnCar,
  struts: trailerOnCar.struts.map((s) =>
    longStrut.kind === 'rated strut' ? { ...s, gear: { ...longStrut, ratings } } : s,
  ),
});
const on = (ratings: Ratings) => check(rule, rated(ratings)).filter((f) => f.subject.element === 'strut/S3');
const load = (workingsOf(trailerOnCar).loads().get('strut/S3')?.load.value?.high ?? 0) / lb;
const row = (pounds: number) => [{ length: 8 * foot, load: pounds * lb }];

describe('strut-load', () => {
  it('passes the sample, whose struts do carry', () => {
    expect(load).toBeGreaterThan(100);
    expect(check(rule, trailerOnCar)).toEqual([]);
  });
  it('finds a strut that carries more than it is rated for', () => {
    const [finding] = on(row(load - 1));
    expect(finding?.severity).toBe('danger');
    expect(english(finding?.governs)).toBeDefined();
    expect(on(row(load + 1))).toEqual([]);
  });
  it('does not pass a strut without a rating at its length', () => {
    expect(on([])[0]?.couldNotRun).toBe(true);
    expect(on([{ length: 4 * foot, load: 1e6 }])[0]?.couldNotRun).toBe(true);
  });
});

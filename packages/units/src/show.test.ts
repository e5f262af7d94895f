import { describe, expect, it } from 'vitest';
import { quantityOf } from './read-quantity.js';
import { show } from './show.js';
import { showPair } from './show-pair.js';
import { showRange } from './show-range.js';

const si = (number: number, unit: string) => quantityOf(number, unit)?.value ?? Number.NaN;
const up = { rounding: 'up' } as const;
const down = { rounding: 'down' } as const;
const workings = { rounding: 'nearest', workings: true } as const;

describe('show', () => {
  it.each([
    [show(si(49, 'in'), 'length', 'in', up), '49 in'],
    [show(si(38.5, 'in'), 'length', 'us', up), '38.5 in'],
    [show(si(40, 'in'), 'length', 'ft in', up), '3 ft 4 in'],
    [show(si(36, 'in'), 'length', 'ft in', up), '3 ft'],
    [show(si(11.96, 'in'), 'length', 'ft in', up), '1 ft'],
    [show(si(-40, 'in'), 'length', 'ft in', up), '-3 ft 4 in'],
    [show(si(0, 'in'), 'length', 'ft in', up), '0 in'],
    [show(si(24_000, 'lb'), 'force', 'lb', down), '24,000 lb'],
    [show(si(24_000, 'lb'), 'force', 'lb', { ...down, system: 'si' }), '106.7 kN'],
    [show(0.6767, 'ratio', '%', up), '68 %'],
    [show(0.025, 'ratio', '%', up), '2.5 %'],
    [show(1.5, 'ratio', '', down), '1.5'],
    [show(14, 'count', '', up), '14'],
    [show(si(60, 'deg'), 'angle', 'deg', down), '60 deg'],
    [show(-0, 'length', 'in', up), '0 in'],
  ])('%s', (printed, expected) => expect(printed).toBe(expected));

  it.each([
    [show(si(12.25, 'in2'), 'area', 'in2', down), '12.25 in2'],
    [show(si(0.2964, 'in'), 'length', 'in', workings), '0.2964 in'],
    [show(si(38.5, 'in'), 'length', 'in', workings), '38.5 in'],
    [show(si(418.75, 'psi'), 'pressure', 'psi', workings), '418.8 psi'],
    [show(si(24_000, 'lb'), 'force', 'lb', workings), '24,000 lb'],
    [show(si(24_123.4, 'lb'), 'force', 'lb', workings), '24,123 lb'],
    [show(0.67671, 'ratio', '%', workings), '67.67 %'],
    [show(0, 'length', 'in', workings), '0 in'],
  ])('shows numbers that multiply out on paper: %s', (printed, expected) => expect(printed).toBe(expected));

  it('keeps arithmetic dust from moving a number', () => {
    expect(show(si(23.9999999997, 'in'), 'length', 'in', down)).toBe('24 in');
    expect(show(si(24.0000000003, 'in'), 'length', 'in', up)).toBe('24 in');
    expect(show(si(23.9999, 'in'), 'length', 'in', down)).toBe('23.9 in');
  });

  it('never shows a load that is there as nothing', () => {
    expect(show(si(0.3, 'lb'), 'force', 'lb', down)).toBe('0.3 lb');
  });

  it('never labels a number with a unit of another kind', () => {
    expect(show(si(24, 'in'), 'length', 'lb', up)).toBe('24 in');
  });

  it('says so where a number is not known', () => {
    expect(show(Number.NaN, 'force', 'lb', up)).toBe('not known');
  });
});

describe('showPair', () => {
  it('adds digits where whole ones would hide that the demand is above', () => {
    expect(showPair(si(24.04, 'in'), si(24.02, 'in'), 'length', 'in')).toEqual({
      value: '24.1 in',
      limit: '24 in',
    });
    expect(showPair(si(24_000.2, 'lb'), si(24_000.1, 'lb'), 'force', 'lb')).toEqual({
      value: '24,001 lb',
      limit: '24,000 lb',
    });
  });
  it('adds digits where whole ones would show a demand above a capacity that it is below', () => {
    expect(showPair(si(24_000.2, 'lb'), si(24_000.6, 'lb'), 'force', 'lb')).toEqual({
      value: '24,000.2 lb',
      limit: '24,000.6 lb',
    });
  });
  it('prints equal numbers as equal', () => {
    expect(showPair(si(1 / 3, 'lb'), si(1 / 3, 'lb'), 'force', 'lb')).toEqual({
      value: '0.3 lb',
      limit: '0.3 lb',
    });
  });
  it('moves both the other way for a least', () => {
    expect(showPair(si(3.96, 'in'), si(4, 'in'), 'length', 'in', { limit: 'least' })).toEqual({
      value: '3.9 in',
      limit: '4 in',
    });
  });
});

describe('showRange', () => {
  it.each([
    [36_000, 42_000, '36,000 to 42,000 lb'],
    [36_000, 36_000, '36,000 lb'],
    [35_999.6, 42_000.2, '35,999 to 42,001 lb'],
  ])('%s to %s lb', (low, high, expected) => {
    expect(showRange({ low: si(low, 'lb'), high: si(high, 'lb') }, 'force', 'lb', up)).toBe(expected);
  });
  it('keeps both units where they have feet and inches', () => {
    expect(showRange({ low: si(36, 'in'), high: si(40, 'in') }, 'length', 'ft in', up)).toBe(
      '3 ft to 3 ft 4 in',
    );
  });
});

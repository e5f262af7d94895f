import { describe, expect, it } from 'vitest';
import { dimensions } from './dimension.js';
import { findUnit, suggestUnit } from './find-unit.js';
import { fromSI, quantity } from './quantity.js';
import { displayUnit } from './show.js';
import { inSystem, usualUnit } from './system.js';
import { units } from './units.js';

describe('the table of units', () => {
  it('gives every spelling to one unit only', () => {
    const spellings = units.flatMap((u) => u.spellings);
    expect(new Set(spellings).size).toBe(spellings.length);
    for (const unit of units.filter((u) => u.id !== '')) {
      for (const spelling of unit.spellings) expect(findUnit(spelling), spelling).toBe(unit);
    }
  });
  it('has a counterpart of the same dimension for every unit', () => {
    for (const unit of units.filter((u) => u.id !== '')) {
      const other = findUnit(unit.counterpart);
      expect(other?.dimension, unit.id).toBe(unit.dimension);
      expect(other?.system === 'both' || other?.system !== unit.system, unit.id).toBe(true);
    }
  });
  it('has a usual unit for every dimension and reader', () => {
    for (const dimension of dimensions) {
      for (const system of ['us', 'si'] as const) {
        const id = usualUnit(dimension, system);
        expect(displayUnit(id, dimension), dimension).toBe(id);
        expect(inSystem(id, system)).toBe(id);
      }
    }
  });
  it('keeps 24 in at 24 and every factor finite and above zero', () => {
    for (const unit of units) {
      expect(fromSI(quantity(1, unit).value, unit), unit.id).toBeCloseTo(1, 15);
      expect(quantity(1, unit).value, unit.id).toBeGreaterThan(0);
    }
  });
});

describe('finding and suggesting', () => {
  it.each([
    ['LB', 'lb'],
    ['Inches', 'in'],
    ['kpa', 'kPa'],
    ['T', 't'],
  ])('%s is %s', (word, id) => expect(findUnit(word)?.id).toBe(id));
  it.each([
    ['inchs', 'inch'],
    ['poinds', 'pounds'],
    ['fete', 'feet'],
    ['degress', 'degrees'],
  ])('%s suggests %s', (word, meant) => expect(suggestUnit(word)).toBe(meant));
  it('suggests nothing for a word that is near none', () => {
    expect(suggestUnit('zebra')).toBeUndefined();
    expect(findUnit('')).toBeUndefined();
  });
});

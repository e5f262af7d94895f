import { describe, expect, it } from 'vitest';
import { message, term } from './compose.js';
import { calculation, count, list, name, quantity, shown, shownBeside } from './message.js';
import type { Figure } from './values/values.js';
import { wordsIn } from './words-in.js';

const inch = 0.0254;
const en = wordsIn('en', 'us');
const es = wordsIn('es', 'us');

const part = (label: Figure['label'], value: number, kind: Figure['quantity']): Figure => ({
  key: 'part',
  label,
  value: { low: value, high: value },
  quantity: kind,
  rounding: 'up',
  inputs: [],
  source: { kind: 'stated' },
});
const width = part(term('figure.width-outside-to-outside-of-contacts'), 16 * inch, 'length');
const ratio = part(term('limit.height-ratio-some-contacts'), 1.5, 'ratio');
const limit: Figure = {
  ...part(term('figure.height-limit'), 24 * inch, 'length'),
  rounding: 'down',
  formula: { kind: 'expression', text: '{ratio} × {width}', over: { ratio, width } },
  inputs: [ratio, width],
  source: { kind: 'computed' },
};
const height = part(term('figure.height'), 38.5 * inch, 'length');

describe('words', () => {
  const beside = shownBeside(height, limit);
  const tooHigh = message('crib-height.too-high', {
    crib: name('gap'),
    height: beside.demand,
    loaded: message('crib-height.some-loaded', { loaded: count(2), contacts: count(4) }),
    limit: beside.limit,
    sum: calculation(limit),
    advice: message('crib-height.use-courses', { courses: count(1) }),
  });

  it('are made in either language, and a name from the plan stays as it is', () => {
    expect(en.message(tooHigh)).toBe(
      'Crib gap is 38 1/2 in tall. The limit is 24 in with 2 of 4 contacts loaded (1.5 × 16 in). Use 1 course.',
    );
    expect(es.message(tooHigh)).toBe(
      'El crib gap mide 38 1/2 in de alto. El límite es 24 in con 2 de 4 contactos cargados (1.5 × 16 in). Use 1 hilada.',
    );
  });

  it('are made in either system of units from the same message', () => {
    expect(wordsIn('en', 'si').message(tooHigh)).toBe(
      'Crib gap is 978 mm tall. The limit is 609 mm with 2 of 4 contacts loaded (1.5 × 406.4 mm). Use 1 course.',
    );
  });

  it('write a calculation with names and with numbers', () => {
    expect(en.calculation(limit)).toEqual({
      names: 'height ratio some contacts × width outside to outside of contacts',
      numbers: '1.5 × 16 in',
    });
    expect(es.calculation(limit)?.names).toBe(
      'proporción de altura con parte de los contactos × ancho de fuera a fuera de los contactos',
    );
  });

  it('leave out what may be left out', () => {
    const too = message('push-margin.too-little', {
      toward: term('push.toward-rear'),
      height: quantity('length', 1, 'up'),
      vehicle: name('truck'),
      share: quantity('share', 0.05, 'down'),
      sum: calculation(limit),
      limit: quantity('share', 0.1, 'up'),
    });
    expect(en.message(too)).toMatch(/The policy requires 10 %\.$/);
  });

  it('say that what is not known is not', () => {
    expect(en.quantity(quantity('force', undefined, 'up'))).toBe('not known');
    expect(es.value({ ...height, value: undefined })).toBe('no se conoce');
  });

  it('keep a computed load to three digits and a stated one whole', () => {
    const load = { ...part(term('figure.load'), 12_345 * 4.4482216152605, 'force'), source: limit.source };
    expect(en.quantity(shown(load))).toBe('12,400 lb');
    expect(en.quantity(shown({ ...load, source: { kind: 'stated' } }))).toBe('12,345 lb');
    expect(en.value(load)).toBe('12,345 lb');
  });

  it('list with and, with or, and plainly', () => {
    const three = [name('A'), name('B'), name('C')];
    expect(en.message(list(three))).toBe('A, B and C');
    expect(es.message(list(three, 'or'))).toBe('A, B o C');
    expect(en.message(list(three, 'plain'))).toBe('A, B, C');
  });

  it('say where a number comes from', () => {
    const note = {
      kind: 'policy',
      policy: 'Shipped',
      limit: 'use limit',
      of: { kind: 'common practice' },
    } as const;
    expect(en.source(note)).toBe('policy Shipped, use limit: common practice, no source');
    expect(es.source(note)).toBe('norma Shipped, use limit: práctica común, sin fuente');
  });

  it('never come out empty, and an unknown id is loud in tests', () => {
    const unknown = { kind: 'message', id: 'crib-height.no-such', holes: {} } as const;
    expect(() => en.message(unknown)).toThrow('No message crib-height.no-such');
  });
});

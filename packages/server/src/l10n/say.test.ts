import { dueOf, measureOf, problemMessage } from '@cribwright/language/internal';
import type { Figure } from '@cribwright/messages';
import { calculation, count, message, name, quantity, term } from '@cribwright/messages';
import { vectorOf } from '@cribwright/units';
import { expect, it } from 'vitest';
import { say } from './say.js';

it('says English where English is asked for', () => {
  const said = problemMessage('step-unknown', { number: name('4') });
  expect(say(said, 'en')).toBe('There is no step 4.');
  expect(say(said, 'es')).toBe('No hay ningún paso 4.');
});

it('puts terms in holes into Spanish, and leaves names and numbers alone', () => {
  const said = problemMessage('wrong-dimension', {
    due: dueOf(['length']),
    example: name('3 ft 4 in'),
    text: name('4 lb'),
    is: measureOf(vectorOf('force')),
  });
  expect(say(said, 'es')).toBe('4 lb es un peso. Aquí va una longitud, por ejemplo 3 ft 4 in.');
});

it('puts a message inside a message into Spanish, and leaves a crib named gap its name', () => {
  const height = message('crib-height.too-high', {
    crib: name('gap'),
    height: quantity('length', 49 * 0.0254, 'up'),
    loaded: message('crib-height.some-loaded', { loaded: count(2), contacts: count(4) }),
    limit: quantity('length', 24 * 0.0254, 'down'),
    sum: calculation(limit),
    advice: message('crib-height.use-courses', { courses: count(6) }),
  });
  expect(say(height, 'es')).toBe(
    'El crib gap mide 49 in de alto. El límite es 24 in con 2 de 4 contactos cargados (24 in). Use 6 hiladas.',
  );
});

const limit: Figure = {
  key: 'heightLimit',
  label: term('figure.height-limit'),
  value: { low: 24 * 0.0254, high: 24 * 0.0254 },
  quantity: 'length',
  rounding: 'down',
  inputs: [],
  source: { kind: 'stated' },
};

import { messages, rules } from '@cribwright/engine';
import { describe, expect, it } from 'vitest';
import { say as english, words } from '../problems/words.js';
import { languageEs } from './language-es.js';
import { rulesEs } from './rules-es.js';
import { say } from './say.js';

const holes = (text: string): readonly string[] =>
  [...text.matchAll(/\{([^}]+)\}/g)].map((m) => m[1] ?? '').sort();

describe('the language', () => {
  it.each(Object.entries(words))('says %s in Spanish with the same holes', (key, text) => {
    expect(holes(languageEs[`language.${key}`] ?? '')).toEqual(holes(text));
  });
});

describe.each(rules.map((r) => ({ id: r.id, words: r.words })))('the rule $id', ({ id, words: table }) => {
  it.each(Object.entries(table))('says %s in Spanish with the same holes', (key, text) => {
    expect(rulesEs[`${id}.${key}`], `${id}.${key} has no Spanish`).toBeTruthy();
    expect(holes(rulesEs[`${id}.${key}`] ?? '')).toEqual(holes(String(text)));
  });
});

it('has no Spanish for what is no longer said', () => {
  const said = new Set(rules.flatMap((r) => Object.keys(r.words).map((key) => `${r.id}.${key}`)));
  expect(Object.keys(rulesEs).filter((id) => !said.has(id))).toEqual([]);
});

it('says English where English is asked for, and where there is no Spanish', () => {
  const message = english('step-unknown', { number: '4' });
  expect(say(message, 'en')).toBe('There is no step 4.');
  expect(say({ ...message, id: 'nobody.knows' }, 'es')).toBe('There is no step 4.');
});

it('puts terms in holes into Spanish, and leaves names and numbers alone', () => {
  const message = english('wrong-dimension', {
    due: 'a length',
    example: '3 ft 4 in',
    text: '4 lb',
    is: 'a weight',
  });
  expect(say(message, 'es')).toBe('Aquí va una longitud, por ejemplo 3 ft 4 in. 4 lb es un peso.');
});

it('puts a sentence inside a sentence into Spanish', () => {
  const height = messages('crib-height', {
    'too-high':
      'Crib {crib} stands {height}. With {loaded} of its contacts loaded it may stand {limit} ({sum}). {advice}',
  });
  const message = height('too-high', {
    crib: 'A',
    height: '49 in',
    loaded: '2',
    limit: '24 in',
    sum: '1.5 × 16 in',
    advice: 'Use 6 courses.',
  });
  expect(say(message, 'es')).toBe(
    'El crib A mide 49 in de alto. Con 2 de sus contactos cargados puede medir 24 in (1.5 × 16 in). Use 6 hiladas.',
  );
});

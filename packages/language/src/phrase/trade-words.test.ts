import { expect, it } from 'vitest';
import { library } from '../index.js';
import { allowedIn, schema } from '../schema/schema.js';
import { literalWords } from './literal-words.js';
import { tradeWords } from './trade-words.js';

const properties = schema.flatMap((b) => [...allowedIn(b).properties.values()]);
const starts = new Set(['use', ...schema.map((b) => b.keyword), ...properties.map((p) => p.key)]);
const phrases = [...properties, ...schema.flatMap((b) => b.numbered ?? [])];
const inside = new Set(phrases.flatMap((p) => [...literalWords(p.phrase)]));
const texts = Object.values(library).join('\n');

it('lead to words that the language has', () => {
  const wrong = tradeWords.filter(({ now, at }) => {
    if (at === 'line') return !starts.has(now);
    if (at === 'words') return !now.split(' ').every((word) => inside.has(word) || inside.has(now));
    return !new RegExp(`\\b${now}\\b`).test(texts);
  });
  expect(wrong).toEqual([]);
});

it('lead away from words that are lower case and another', () => {
  expect(tradeWords.filter(({ old, now }) => old === now || old !== old.toLowerCase())).toEqual([]);
});

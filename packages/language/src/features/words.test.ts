import { expect, it } from 'vitest';
import { editWords } from '../edits/words.js';
import { editEs } from '../edits/words-es.js';
import { editorWords } from './words.js';
import { editorEs } from './words-es.js';

const holes = (words: string): string[] => [...words.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '').sort();

it.each(Object.entries(editorWords))('%s is said in Spanish with the same holes', (key, english) => {
  const spanish = editorEs[`editor.${key}`];
  expect(spanish).toBeTruthy();
  expect(holes(spanish ?? '')).toEqual(holes(english));
});

it.each(Object.entries(editWords))('why not: %s is said in Spanish with the same holes', (key, english) => {
  const spanish = editEs[`edit.${key}`];
  expect(spanish).toBeTruthy();
  expect(holes(spanish ?? '')).toEqual(holes(english));
});

import { caution } from '@cribwright/engine';
import { message, name } from '@cribwright/messages';
import { tallCrib } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import type { Lesson } from '@cribwright/workspace';
import { expect, it } from 'vitest';
import { plainSpeech, speechOf } from '../report/words.js';
import { escaped } from './escaped.js';
import { handout } from './handout.js';

const analysis = analyze(tallCrib);
const crib = analysis.supports.find((s) => s.name === 'A');
const limit = crib?.figures.heightLimit;
if (limit === undefined) throw new Error('the sample has no height limit');

const plan = { plan: tallCrib, analysis, places: {}, partial: false, unread: [] } as const;

const lesson: Lesson = {
  title: 'How high <may> it stand?',
  about: 'Height and width',
  paragraphs: ['A crib is as steady as it is wide.'],
  plans: [plan],
  exercises: [
    {
      name: name('Limit'),
      plan,
      ask: name('How high may A stand?'),
      hints: ['Count.'],
      points: 2,
      answer: { kind: 'figure', figure: limit },
    },
    {
      name: name('Fault'),
      plan,
      ask: name('What is wrong?'),
      hints: [],
      points: 1,
      answer: { kind: 'faults', findings: analysis.findings.filter((f) => f.rule === 'crib-height') },
    },
    {
      name: name('Broken'),
      plan: undefined,
      ask: name('Why?'),
      hints: [],
      points: undefined,
      answer: { kind: 'none', why: message('lesson.no-support', { on: name('Z') }) },
    },
  ],
};

it('asks without giving any answer away', () => {
  const page = handout(lesson, plainSpeech, false);
  expect(page).toContain('How high may A stand?');
  expect(page).toContain('of 3');
  expect(page).not.toContain('24 in (1.5');
  expect(page).not.toContain('crib-height');
  expect(page).not.toMatch(/A,? 49 in/);
});

it('gives the key with its sum and its source, and says where there is none', () => {
  const page = handout(lesson, plainSpeech, true);
  expect(page).toContain('<strong>24 in</strong>');
  expect(page).toContain('1.5 × 16 in');
  expect(page).toContain('common practice, no source');
  expect(page).toContain('<strong>crib-height</strong>');
  expect(page).toContain('No answer key: The plan has no support Z.');
});

it('carries the caution, and lets no text become a tag', () => {
  for (const page of [handout(lesson, plainSpeech, false), handout(lesson, plainSpeech, true)]) {
    expect(page).toContain(caution);
    expect(page).not.toContain('<may>');
  }
});

it('lets no sign through that a terminal would take for an order', () => {
  expect(escaped('a\u001b[31m<b>\u202e\n')).toBe('a\ufffd[31m&lt;b&gt;\ufffd\n');
});

it('is in Spanish and in SI where asked for; what its author wrote stays as it is', () => {
  const speech = speechOf({ language: 'es', units: 'si' });
  const [handed, key] = [handout(lesson, speech, false), handout(lesson, speech, true)];
  for (const page of [handed, key]) {
    expect(page).toContain('<html lang="es">');
    expect(page).toContain('Esta es una ayuda para planificar y enseñar.');
    expect(page).not.toContain('planning and teaching aid');
    expect(page).toContain('(2 puntos)');
    expect(page).toContain('How high may A stand?');
  }
  expect(handed).toContain('Puntos');
  expect(key).toContain('<strong>609 mm</strong>');
  expect(key).toContain('Sin clave: El plan no tiene ningún apoyo Z.');
});

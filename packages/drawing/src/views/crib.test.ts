import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(plan);
const view = drawn(plan, analysis, { view: 'crib', subject: 'crib/C' });

it('builds every course, from the ground up, and says how its timbers lie', () => {
  for (let n = 1; n <= 11; n++) expect(view.group(`course ${n}`)).toBeDefined();
  expect(view.words('course 1')).toEqual(['1: solid, 6 lengthwise']);
  expect(view.words('course 2')).toEqual(['2: 2 crosswise']);
});

it('numbers the contacts with load, capacity and use as the analysis has them', () => {
  const contacts = analysis.supports.find((s) => s.id === 'crib/C')?.contacts ?? [];
  expect(contacts).toHaveLength(4);
  for (const contact of contacts) {
    expect(view.words(`contact ${contact.number}`)).toEqual([String(contact.number)]);
    expect(view.group(`contact ${contact.number}`).name).toContain(contact.meets?.part ?? 'nothing');
  }
  expect(view.words('contact table').filter((w) => w === '6,000 lb')).toHaveLength(4);
});

it('shows the load at a stage, and the worst of all cases beside it', () => {
  const stage = analysis.stages.length - 1;
  const now = drawn(plan, analysis, { view: 'crib', subject: 'crib/C', stage });
  expect(now.words('contact table')).toEqual(expect.arrayContaining(['now', 'worst']));
});

import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { expect, it } from 'vitest';
import { atCursor } from '../testing/context-of.js';
import { lensesOf } from './code-lens.js';
import { hintsOf } from './inlay-hint.js';

async function opened(text = trailerPlan, locale: 'en' | 'es' = 'en') {
  const { desk, file } = await atCursor(`<|>${text}`, { 'fleet.crib': fleet }, { locale });
  const checked = await desk.checked(file.uri);
  if (!checked) throw new Error('not checked');
  return { desk, file, checked };
}
const lineOf = (words: string): number => trailerPlan.split('\n').findIndex((l) => l.includes(words));

it('shows a crib\u2019s height at the end of its first line', async () => {
  const { desk, file, checked } = await opened();
  const hints = hintsOf(desk, file, checked, { start: 0, end: file.text.length });
  expect(hints.map((h) => h.position.line)).toEqual([lineOf('crib A')]);
  expect(hints[0]?.label).toContain('49 in');
});

it('shows hints in the units that the reader set, whatever the plan asks for', async () => {
  const { desk, file, checked } = await opened();
  const metric = { ...desk, settings: { ...desk.settings, units: 'si' as const } };
  const [hint] = hintsOf(metric, file, checked, { start: 0, end: file.text.length });
  expect(hint?.label).toContain('1,245 mm');
  expect(hint?.label).not.toContain(' in');
});

it('shows hints of the lines asked for only', async () => {
  const { desk, file, checked } = await opened();
  expect(hintsOf(desk, file, checked, { start: 0, end: 10 })).toEqual([]);
});

it('tells above a plan what is unsafe, and above a crib its figures', async () => {
  const { desk, file, checked } = await opened();
  const [plan, safe, crib] = lensesOf(desk, file, checked);
  expect(safe?.command).toMatchObject({ command: 'cribwright.makeSafe', arguments: [file.uri] });
  expect(plan?.range.start.line).toBe(lineOf('plan "'));
  expect(plan?.command?.title).toMatch(/\d+ unsafe/);
  expect(crib?.range.start.line).toBe(lineOf('crib A'));
  expect(crib?.command).toMatchObject({ command: 'cribwright.openPreview', arguments: [file.uri, 'crib/A'] });
  expect(crib?.command?.title).toContain('49 in');
});

it('never calls a plan safe that could not be read whole', async () => {
  const { desk, file, checked } = await opened(trailerPlan.replace('courses   14', 'courses   six'));
  const [plan] = lensesOf(desk, file, checked);
  expect(plan?.command?.title ?? 'not checked').toContain('not checked');
  expect(plan?.command?.title ?? '').not.toContain('nothing unsafe');
});

it('speaks Spanish to who reads Spanish', async () => {
  const { desk, file, checked } = await opened(trailerPlan, 'es');
  expect(lensesOf(desk, file, checked)[0]?.command?.title).toContain('Ver el dibujo');
});

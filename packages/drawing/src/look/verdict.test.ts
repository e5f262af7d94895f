import type { Finding } from '@cribwright/engine';
import { name } from '@cribwright/messages';
import { tallCrib, trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { boundsOf } from '../scene/bounds.js';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(trailerOnCar);
const [danger] = analyze(tallCrib).findings.filter((f) => f.severity === 'danger');
if (danger === undefined) throw new Error('the tall crib is found safe');
const on = (element: string, change: Partial<Finding> = {}): Finding => ({
  ...danger,
  subject: { element },
  ...change,
});
const head = (findings: readonly Finding[], change = {}) =>
  drawn(trailerOnCar, { ...analysis, findings, ...change }, { view: 'top' }).words('heading');

it('names what is unsafe beside the title, and apart from it what was not checked', () => {
  const words = head([on('crib/A'), on('crib/A'), on('strut/S1'), on('crib/B', { couldNotRun: true })]);
  expect(words).toContain('Unsafe: A, S1');
  expect(words).toContain('Not checked: B');
});

it('says nothing where nothing is found, and nothing of what was accepted', () => {
  const accepted = { by: 'Capt. Reyes', reason: 'wall', until: '2027-03-01' };
  for (const words of [head([]), head([on('crib/A', { accepted })])])
    expect(words.join(' ')).not.toMatch(/unsafe|checked|safe/i);
});

it('says under the title that the plan was not read whole, and where', () => {
  const unread = [3, 4, 5].map((line) => ({
    file: 'fleet.crib',
    range: { start: { line } },
    message: name('There is no unit lbb.'),
  }));
  const words = head([], { partial: true, unread }).join(' ');
  expect(words).toContain('NOT READ WHOLE: part of this plan may be missing. Do not build from it.');
  expect(words).toContain('Not read: fleet.crib line 4. There is no unit lbb.');
  expect(words).toContain('And 1 more.');
  expect(head([], { partial: true }).join(' ')).toContain('NOT READ WHOLE');
});

it('says how many more there are where there is no room for all, and moves nothing else', () => {
  const many = Array.from({ length: 60 }, (_, i) => on(`crib/NorthernmostCrib${i}`));
  expect(head(many).join(' ')).toMatch(/Unsafe: .* and \d+ more/);
  const place = (findings: readonly Finding[]) =>
    boundsOf(drawn(trailerOnCar, { ...analysis, findings }, { view: 'top' }).shape('heading', 'rule'));
  expect(place(many)).toEqual(place([]));
});

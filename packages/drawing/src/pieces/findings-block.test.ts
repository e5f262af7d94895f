import { english } from '@cribwright/messages/testing';
import { tallCrib } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(tallCrib);

it('says under the close-up of a crib why it is unsafe, in the words of the finding', () => {
  const { words, group } = drawn(tallCrib, analysis, { view: 'crib', subject: 'crib/A' });
  const [worst] = analysis.findings.filter((f) => f.subject.element === 'crib/A' && f.severity === 'danger');
  expect(worst).toBeDefined();
  expect(words('finding 0').join(' ')).toContain(english(worst?.message) ?? '?');
  expect(group('finding 0').name).toContain(english(worst?.message) ?? '?');
});

it('leaves a close-up as it is where nothing is found', () => {
  const { groups } = drawn(tallCrib, { ...analysis, findings: [] }, { view: 'crib', subject: 'crib/A' });
  expect(groups.some((g) => g.key === 'findings')).toBe(false);
});

it('says that the contacts were not calculated where they were not', () => {
  const bare = { ...analysis, supports: analysis.supports.map((s) => ({ ...s, contacts: [] })) };
  const { words } = drawn(tallCrib, bare, { view: 'crib', subject: 'crib/A' });
  expect(words('contact table')).toContain('not calculated');
});

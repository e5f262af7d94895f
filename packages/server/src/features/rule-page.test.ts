import { languageCodes } from '@cribwright/language';
import { rules } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { rulePageText } from './rule-page-text.js';

it.each([...rules.map((r) => r.id), ...languageCodes])(
  '%s has a page in both languages, so that its link leads somewhere',
  (code) => {
    const [english, spanish] = [rulePageText(code, 'en'), rulePageText(code, 'es')];
    expect(english).toMatch(new RegExp(`^# ${code}\\b`));
    expect(spanish).toMatch(new RegExp(`^# ${code}\\b`));
    expect(spanish).not.toBe(english);
  },
);

it('shows what a message about the text says, its holes left open', () => {
  const page = rulePageText('unit-missing', 'en');
  expect(page).toContain('…');
  expect(page).not.toContain('{');
});

it('has no page for what nobody says', () => {
  expect(rulePageText('no-such-code', 'en')).toBeUndefined();
  expect(rulePageText('constructor', 'en')).toBeUndefined();
});

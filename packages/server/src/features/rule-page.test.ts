import { languageCodes } from '@cribwright/language';
import { rules } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { rulePageText } from './rule-page-text.js';

it.each([...rules.map((r) => r.id), ...languageCodes])(
  '%s has a page in both languages, so that its link leads somewhere',
  async (code) => {
    const [english, spanish] = [await rulePageText(code, 'en'), await rulePageText(code, 'es')];
    expect(english).toMatch(new RegExp(`^# ${code}\\b`));
    expect(spanish).toMatch(new RegExp(`^# ${code}\\b`));
    expect(spanish).not.toBe(english);
  },
);

it('shows what a message about the text says, its holes left open', async () => {
  const page = await rulePageText('unit-missing', 'en');
  expect(page).toContain('…');
  expect(page).not.toContain('{');
});

it('has no page for what nobody says', async () => {
  expect(await rulePageText('no-such-code', 'en')).toBeUndefined();
  expect(await rulePageText('constructor', 'en')).toBeUndefined();
});

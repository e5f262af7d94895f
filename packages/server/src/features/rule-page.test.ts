import { languageCodes } from '@cribwright/language';
import { rules } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { rulePageText } from './rule-page-text.js';

it.each([...rules.map((r) => r.id), ...languageCodes])(
  '%s has a page, so that its link leads somewhere',
  (code) => {
    expect(
      rulePageText(code, 'en')?.startsWith(`# ${code}`) || rulePageText(code, 'en')?.includes(code),
    ).toBe(true);
  },
);

it('shows what a message about the text says, its holes left open', () => {
  const page = rulePageText('unit-missing', 'en');
  expect(page).toContain('…');
  expect(page).not.toContain('{');
  expect(rulePageText('unit-missing', 'es')).not.toBe(page);
});

it('has no page for what nobody says', () => {
  expect(rulePageText('no-such-code', 'en')).toBeUndefined();
  expect(rulePageText('constructor', 'en')).toBeUndefined();
});

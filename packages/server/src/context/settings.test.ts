import { expect, it } from 'vitest';
import { defaultSettings, localeOf, longestCheck, readSettings } from './settings.js';

it('keeps hints off until someone asks for them', () => {
  expect(readSettings(undefined)).toEqual(defaultSettings);
  expect(defaultSettings.inlayHints).toBe(false);
});

it('reads a tree of settings and a flat one', () => {
  expect(readSettings({ inlayHints: { enabled: true }, units: 'si' })).toMatchObject({
    inlayHints: true,
    units: 'si',
  });
  expect(readSettings({ 'inlayHints.enabled': true, language: 'es' })).toMatchObject({
    inlayHints: true,
    language: 'es',
  });
});

it('passes over values that make no sense', () => {
  expect(readSettings({ inlayHints: 'yes', codeLens: 7, units: 'cubits', language: [] })).toEqual(
    defaultSettings,
  );
  expect(readSettings(['units'])).toEqual(defaultSettings);
});

it('speaks the editor\u2019s language where it can', () => {
  expect(localeOf(defaultSettings, 'es-MX')).toBe('es');
  expect(localeOf(defaultSettings, 'de')).toBe('en');
  expect(localeOf(defaultSettings, undefined)).toBe('en');
  expect(localeOf({ ...defaultSettings, language: 'en' }, 'es')).toBe('en');
});

it('takes how long a check may take before it is shown in two goes', () => {
  expect(longestCheck({ longestCheck: 0 })).toBe(0);
  for (const odd of [undefined, {}, { longestCheck: -1 }, { longestCheck: '5' }])
    expect(longestCheck(odd)).toBe(40);
});

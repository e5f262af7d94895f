import { expect, it } from 'vitest';
import { rules } from '../generated/rule-index.js';
import { isWithheld as isRuleWithheld } from './withheld.js';

const ids = rules.map((r) => r.id);

function isWithheld(id: string, plan: Parameters<typeof isRuleWithheld>[1]): boolean {
  const rule = rules.find((r) => r.id === id);
  if (rule === undefined) throw new Error(`there is no rule ${id}`);
  return isRuleWithheld(rule, plan);
}

it('runs every rule on a plan that was read whole', () => {
  expect(ids.filter((id) => isWithheld(id, {}))).toEqual([]);
});

it('leaves out what would judge by what was not read', () => {
  expect(ids.filter((id) => isWithheld(id, { unread: ['size up'] }))).toEqual(['size-up-missing']);
  expect(isWithheld('wheels-unchocked', { unread: ['steps'] })).toBe(true);
  expect(isWithheld('crib-load', { unread: ['steps'] })).toBe(false);
  expect(isWithheld('crib-load', { unread: ['rest'] })).toBe(true);
  expect(isWithheld('crib-reach', { unread: ['rest'] })).toBe(false);
  expect(isWithheld('crib-reach', { unread: ['vehicle'] })).toBe(true);
  expect(isWithheld('unsupported-end', { unread: ['size up', 'rest'] })).toBe(true);
});

it('never leaves out what judges one element alone, nor the rule that says that part was not read', () => {
  for (const id of ['crib-height', 'strut-angle', 'expectation-unmet'])
    expect(isWithheld(id, { unread: ['rest'] })).toBe(false);
});

import { expect, it } from 'vitest';
import { shortName } from './short-name.js';

it('keeps a name that is short enough', () => {
  expect(shortName('A')).toBe('A');
  expect(shortName('RearDriverSideCrib12')).toBe('RearDriverSideCrib12');
});

it('keeps the start and the end of a long one, so that names that differ at their ends still do', () => {
  expect(shortName('NorthernmostCribBesideTheLandingGear')).toBe('Northernm...dingGear');
  expect(shortName('NorthernmostCribOnTheDriverSide')).not.toBe(
    shortName('NorthernmostCribOnTheDriverSideTwo'),
  );
  expect([...shortName('車'.repeat(60))]).toHaveLength(20);
});

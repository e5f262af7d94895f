import { english } from '@cribwright/messages/testing';
import { hastyTrailer, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

it('passes struts on both sides, and none at all', () => {
  expect(check(rule, trailerOnCar)).toEqual([]);
  expect(check(rule, { ...trailerOnCar, struts: [] })).toEqual([]);
});

it('says which side has none', () => {
  const found = check(rule, hastyTrailer);
  expect(found.map((f) => english(f.message))).toEqual([
    expect.stringContaining('struts on the driver side (S1, S3) and none on the passenger side'),
  ]);
});

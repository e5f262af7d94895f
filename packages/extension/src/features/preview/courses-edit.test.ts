import { trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { coursesEdit } from './courses-edit.js';

const [crib] = trailerOnCar.cribs;

it('sets one course more or one less', () => {
  const at = { element: crib?.id, property: 'courses' };
  const courses = crib?.courses ?? Number.NaN;
  expect(coursesEdit(trailerOnCar, crib?.id ?? '', 1)).toEqual({
    kind: 'set',
    at,
    text: String(courses + 1),
  });
  expect(coursesEdit(trailerOnCar, crib?.id ?? '', -1)).toEqual({
    kind: 'set',
    at,
    text: String(courses - 1),
  });
});

it('says why where there is no course to add or to take', () => {
  const last = { ...trailerOnCar, cribs: trailerOnCar.cribs.map((c) => ({ ...c, courses: 1 })) };
  expect(coursesEdit(last, crib?.id ?? '', -1)).toHaveProperty('refused');
  expect(coursesEdit(trailerOnCar, 'strut/S1', 1)).toHaveProperty('refused');
  expect(coursesEdit(undefined, 'crib/A', 1)).toHaveProperty('refused');
});

import { expect, it } from 'vitest';
import { columns } from './columns.js';

it('lines names up to the left and numbers to the right', () => {
  expect(
    columns(
      ['', 'needed'],
      [
        ['Fir4x4 24 in', '48'],
        ['wedge pairs', '8'],
      ],
    ),
  ).toEqual(['                needed', '  Fir4x4 24 in      48', '  wedge pairs        8']);
});

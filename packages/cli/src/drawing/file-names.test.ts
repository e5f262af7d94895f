import { expect, it } from 'vitest';
import { fileNames } from './file-names.js';

const named = (...titles: string[]) => {
  const name = fileNames();
  return titles.map((t) => name([t, 'side'], 'svg'));
};

it('keeps letters and digits of any script, and makes the rest dashes', () => {
  expect(named('Car & truck, 2nd!', 'Ångström ½', '貨車')).toEqual([
    'car-truck-2nd.side.svg',
    'ångström-½.side.svg',
    '貨車.side.svg',
  ]);
});

it('gives no name twice, however titles differ', () => {
  const names = named('Car, truck', 'Car; truck', 'car truck', 'Car-truck-2', 'Å', 'A\u030a');
  expect(new Set(names.map((n) => n.toLowerCase().normalize('NFC'))).size).toBe(6);
  expect(names.slice(0, 4)).toEqual([
    'car-truck.side.svg',
    'car-truck.side-2.svg',
    'car-truck.side-3.svg',
    'car-truck-2.side.svg',
  ]);
});

it('names what has no letter at all, and cuts what no file system takes', () => {
  expect(named('!!!', '')).toEqual(['untitled.side.svg', 'untitled.side-2.svg']);
  const [long = ''] = named('貨'.repeat(500));
  expect(Buffer.byteLength(long)).toBeLessThan(255);
});

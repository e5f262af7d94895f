import { dimensions, type Unit, units } from '@cribwright/units';
import Qty from 'js-quantities';
import { unit as mathUnit } from 'mathjs';
import type { Check } from './check.js';
import { program } from './sources.js';

/** Our unit, and how each library writes it; `undefined` where the library has no such unit. */
interface Names {
  readonly si: string;
  readonly mathjs: string | undefined;
  readonly quantities: string | undefined;
}

const names: Readonly<Record<string, Names>> = {
  in: { si: 'm', mathjs: 'in', quantities: 'in' },
  ft: { si: 'm', mathjs: 'ft', quantities: 'ft' },
  yd: { si: 'm', mathjs: 'yd', quantities: 'yd' },
  mm: { si: 'm', mathjs: 'mm', quantities: 'mm' },
  cm: { si: 'm', mathjs: 'cm', quantities: 'cm' },
  m: { si: 'm', mathjs: 'm', quantities: 'm' },
  lb: { si: 'N', mathjs: 'lbf', quantities: 'lbf' },
  kip: { si: 'N', mathjs: 'kip', quantities: undefined },
  N: { si: 'N', mathjs: 'N', quantities: 'N' },
  daN: { si: 'N', mathjs: 'daN', quantities: 'daN' },
  kN: { si: 'N', mathjs: 'kN', quantities: 'kN' },
  kgf: { si: 'N', mathjs: undefined, quantities: undefined },
  kg: { si: 'kg', mathjs: 'kg', quantities: 'kg' },
  t: { si: 'kg', mathjs: 'tonne', quantities: 'tonne' },
  lbm: { si: 'kg', mathjs: 'lbm', quantities: 'lb' },
  deg: { si: 'rad', mathjs: 'deg', quantities: 'deg' },
  rad: { si: 'rad', mathjs: 'rad', quantities: 'rad' },
  psi: { si: 'Pa', mathjs: 'psi', quantities: 'psi' },
  psf: { si: 'Pa', mathjs: 'lbf/ft^2', quantities: 'lbf/ft2' },
  ksi: { si: 'Pa', mathjs: 'kip/in^2', quantities: undefined },
  Pa: { si: 'Pa', mathjs: 'Pa', quantities: 'Pa' },
  kPa: { si: 'Pa', mathjs: 'kPa', quantities: 'kPa' },
  MPa: { si: 'Pa', mathjs: 'MPa', quantities: 'MPa' },
  in2: { si: 'm2', mathjs: 'in^2', quantities: 'in2' },
  ft2: { si: 'm2', mathjs: 'ft^2', quantities: 'ft2' },
  mm2: { si: 'm2', mathjs: 'mm^2', quantities: 'mm2' },
  cm2: { si: 'm2', mathjs: 'cm^2', quantities: 'cm2' },
  ft3: { si: 'm3', mathjs: 'ft^3', quantities: 'ft3' },
  in3: { si: 'm3', mathjs: 'in^3', quantities: 'in3' },
  yd3: { si: 'm3', mathjs: 'yd^3', quantities: 'yd3' },
  gal: { si: 'm3', mathjs: undefined, quantities: 'gal' },
  L: { si: 'm3', mathjs: 'L', quantities: 'L' },
  min: { si: 's', mathjs: 'minute', quantities: 'min' },
  h: { si: 's', mathjs: 'hour', quantities: 'h' },
  'kg/m3': { si: 'kg/m3', mathjs: 'kg/m^3', quantities: 'kg/m3' },
  'lbm/ft3': { si: 'kg/m3', mathjs: 'lbm/ft^3', quantities: 'lb/ft3' },
  pcf: { si: 'N/m3', mathjs: 'lbf/ft^3', quantities: 'lbf/ft3' },
  'kN/m3': { si: 'N/m3', mathjs: 'kN/m^3', quantities: 'kN/m3' },
  'lb/in': { si: 'N/m', mathjs: 'lbf/in', quantities: 'lbf/in' },
  'lb/ft': { si: 'N/m', mathjs: 'lbf/ft', quantities: 'lbf/ft' },
  'kip/in': { si: 'N/m', mathjs: 'kip/in', quantities: undefined },
  'kN/m': { si: 'N/m', mathjs: 'kN/m', quantities: 'kN/m' },
  'lb ft': { si: 'N*m', mathjs: 'lbf ft', quantities: 'lbf*ft' },
  'lb in': { si: 'N*m', mathjs: 'lbf in', quantities: 'lbf*in' },
  'kN m': { si: 'N*m', mathjs: 'kN m', quantities: 'kN*m' },
};

const sizeOf = ({ factor }: Unit): number =>
  (Number(factor.above) / Number(factor.below)) * (factor.pi === 1 ? Math.PI : 1);

const forMathjs = (si: string) => si.replace(/(\d)/, '^$1').replace('*', ' ');

const libraries = [
  {
    program: 'mathjs 15.2.0',
    /** It keeps a few factors to nine digits only. */
    within: 1e-8,
    size: (name: Names) =>
      name.mathjs === undefined ? undefined : mathUnit(1, name.mathjs).toNumber(forMathjs(name.si)),
  },
  {
    program: 'js-quantities 1.8.0',
    /** It keeps the pound of force to seven digits and psi to six. */
    within: 5e-7,
    size: (name: Names) =>
      name.quantities === undefined ? undefined : Qty(1, name.quantities).to(name.si).scalar,
  },
] as const;

/** Every unit of ours that a library has too, against it: one row for each dimension and library. */
export const libraryChecks: readonly Check[] = dimensions.flatMap((dimension) =>
  libraries.flatMap(({ program: name, within, size }): readonly Check[] => {
    const pairs = units.flatMap((u) => {
      const theirs = u.dimension === dimension ? names[u.id] : undefined;
      const value = theirs === undefined ? undefined : size(theirs);
      return value === undefined ? [] : [{ id: u.id, ratio: sizeOf(u) / value }];
    });
    if (pairs.length === 0) return [];
    return [
      {
        what: `${dimension}: ${pairs.map((p) => p.id).join(', ')}; largest relative difference`,
        source: program(name),
        expected: 0,
        unit: '',
        within,
        computed: () => Math.max(...pairs.map((p) => Math.abs(p.ratio - 1))),
      },
    ];
  }),
);

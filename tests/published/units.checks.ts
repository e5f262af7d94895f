import { across, findUnit, fromSI, quantityOf, STANDARD_GRAVITY } from '@cribwright/units';
import type { Check, Subject } from './check.js';
import { type AnyReference, memory, published } from './sources.js';
import { libraryChecks } from './unit-libraries.js';

const HUD = published('HUD Residential Structural Design Guide', 'appendix B, unit conversions');
const NAVY = published('US Navy facilities training manual', 'appendix B, SI conversion factors');
const WIKIBOOKS = published('Wikibooks Engineering Statics', 'appendix, conversion factors');
const NUMBAT = published('Numbat unit definitions', 'examples/tests/unit_consistency_misc.nbt');

/** `number unit` in `other`. A weight and a mass meet at standard gravity. */
const convert = (number: number, unit: string, other: string): number => {
  const from = quantityOf(number, unit);
  const to = findUnit(other);
  if (from === undefined || to === undefined) throw new Error(`no unit ${unit} or ${other}`);
  const fitting = across(from, to.dimension);
  if (fitting === undefined) throw new Error(`${unit} is not ${other}`);
  return fromSI(fitting.quantity.value, to);
};

const row = (
  number: number,
  unit: string,
  expected: number,
  other: string,
  within: number,
  source: AnyReference,
): Check => ({
  what: `${number} ${unit}`,
  source,
  expected,
  unit: other,
  within,
  computed: () => convert(number, unit, other),
});

const exact = 1e-12;

export const subject: Subject = {
  subject: 'Units',
  checks: [
    ...libraryChecks,
    row(1, 'lb', 4.448222, 'N', 5e-7, HUD),
    row(1, 'kip', 4448.222, 'N', 5e-4, HUD),
    row(1, 'psi', 6894.757, 'Pa', 5e-4, HUD),
    row(1, 'psf', 47.88, 'Pa', 5e-3, HUD),
    row(1, 'lb', 0.4535924, 'kg', 5e-8, HUD),
    row(1, 'ton', 907.1848, 'kg', 1e-4, HUD),
    row(1, 'in', 25.4, 'mm', exact, NAVY),
    row(1, 'ft', 0.3048, 'm', exact, NAVY),
    row(1, 'ton', 8.89644, 'kN', 5e-6, NAVY),
    row(1, 'pcf', 16.0185, 'kg/m3', 5e-5, NAVY),
    row(1, 'lb ft', 1.3558, 'N m', 5e-5, WIKIBOOKS),
    row(1, 'gal', 3.785411784, 'L', exact, NUMBAT),
    row(1, 'ft3', 7.48, 'gal', 5e-3, published('Weights and measures page, glen-l.com', 'table')),
    row(1, 'lb/in', 175.1268, 'N/m', 5e-5, memory('NIST SP 811 (2008), appendix B.8')),
    row(1, 'ksi', 6.894757, 'MPa', 5e-7, memory('NIST SP 811 (2008), appendix B.8')),
    row(1, 'ft2', 0.09290304, 'm2', exact, memory('NIST SP 811 (2008), appendix B.8')),
    row(1, 'in2', 6.4516, 'cm2', exact, memory('NIST SP 811 (2008), appendix B.8')),
    row(1, 'yd3', 0.7645549, 'm3', 5e-8, memory('NIST SP 811 (2008), appendix B.8')),
    row(1, 'rad', 57.29577951308232, 'deg', exact, memory('definition of the degree')),
    row(22, 'psi', 3168, 'psf', 1e-9, published('Crane-support ground pressure table', 'virgin ground')),
    row(6.6, 'kN/m3', 42, 'pcf', 0.05, published('ASCE/SEI 7', 'Table C3-2, gasoline')),
    row(12.73, 'kN/m3', 81, 'pcf', 0.05, published('ASCE/SEI 7', 'Table C3-2, asphaltum')),
    {
      what: 'standard gravity',
      source: memory('NIST SP 811 (2008), appendix B.8; 3rd CGPM (1901)'),
      expected: 9.80665,
      unit: 'm/s2',
      within: 0,
      computed: () => STANDARD_GRAVITY,
    },
  ],
};

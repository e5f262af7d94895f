import { degrees, type Factor, fraction, one, product, quotient } from './factor.js';
import type { Unit } from './unit.js';

const SI = 'BIPM, The International System of Units (SI), 9th edition';
const YARD = 'NIST SP 811 (2008), appendix B: international yard and pound, exact';
const GRAVITY = 'NIST SP 811 (2008), appendix B: exact pound and standard gravity 9.80665 m/s2';
const GALLON = 'NIST Handbook 44, appendix C: US gallon = 231 cubic inches, exact';
const PRODUCT = 'Product of exact factors (NIST SP 811 (2008), appendix B)';

const inch = fraction(254n, 10_000n);
const foot = product(inch, fraction(12n));
const pound = fraction(45_359_237n, 100_000_000n);
const gravity = fraction(980_665n, 100_000n);
const poundForce = product(pound, gravity);
const kip = product(poundForce, fraction(1000n));
const ton = product(poundForce, fraction(2000n));
const milli = fraction(1n, 1000n);
const kilo = fraction(1000n);
const mega = fraction(1_000_000n);
const squareInch = product(inch, inch);
const squareFoot = product(foot, foot);
const cubicFoot = product(squareFoot, foot);
const gallon = product(squareInch, inch, fraction(231n));
const liter = milli;

type Row = readonly [
  spellings: string,
  system: Unit['system'],
  factor: Factor,
  source: string,
  step: number,
  counterpart: string,
];

/** One row a unit: spellings (the first is printed, parted by `|`), readers, size, source, step, counterpart. */
const table: Readonly<Record<Unit['dimension'], readonly Row[]>> = {
  length: [
    ['in|inch|inches|"|″', 'us', inch, YARD, 0.1, 'mm'],
    ["ft|foot|feet|'|′", 'us', foot, YARD, 0.1, 'm'],
    ['yd|yard|yards', 'us', product(foot, fraction(3n)), YARD, 0.1, 'm'],
    ['mm|millimetre|millimetres|millimeter|millimeters', 'si', milli, SI, 1, 'in'],
    ['cm|centimetre|centimetres|centimeter|centimeters', 'si', fraction(1n, 100n), SI, 0.1, 'in'],
    ['m|meter|meters|metre|metres', 'si', one, SI, 0.01, 'ft'],
  ],
  force: [
    ['lb|lbs|lbf|pound|pounds', 'us', poundForce, GRAVITY, 1, 'kN'],
    ['kip|kips', 'us', kip, GRAVITY, 0.1, 'kN'],
    ['ton|tons|tonf', 'us', ton, GRAVITY, 0.1, 'kN'],
    ['N|newton|newtons', 'si', one, SI, 1, 'lb'],
    ['daN', 'si', fraction(10n), SI, 1, 'lb'],
    ['kN|kilonewton|kilonewtons', 'si', kilo, SI, 0.1, 'lb'],
    ['kgf', 'si', gravity, GRAVITY, 1, 'lb'],
  ],
  mass: [
    ['kg|kilogram|kilograms|kilogramme|kilogrammes', 'si', one, SI, 1, 'lbm'],
    ['t|tonne|tonnes', 'si', kilo, SI, 0.01, 'lbm'],
    ['lbm', 'us', pound, YARD, 1, 'kg'],
  ],
  angle: [
    ['deg|degree|degrees|°', 'both', degrees, SI, 0.1, 'deg'],
    ['rad|radian|radians', 'both', one, SI, 0.001, 'rad'],
  ],
  ratio: [
    ['%|percent|per cent', 'both', fraction(1n, 100n), SI, 0.1, '%'],
    ['', 'both', one, SI, 0.01, ''],
  ],
  count: [],
  pressure: [
    ['psi', 'us', quotient(poundForce, squareInch), PRODUCT, 1, 'kPa'],
    ['psf|lb/ft2|lb/ft²', 'us', quotient(poundForce, squareFoot), PRODUCT, 1, 'kPa'],
    ['ksi', 'us', quotient(kip, squareInch), PRODUCT, 0.01, 'MPa'],
    ['ksf|kip/ft2', 'us', quotient(kip, squareFoot), PRODUCT, 0.1, 'kPa'],
    ['tsf|ton/ft2|ton/ft²', 'us', quotient(ton, squareFoot), PRODUCT, 0.1, 'kPa'],
    ['Pa|N/m2|N/m²', 'si', one, SI, 1, 'psf'],
    ['kPa|kN/m2|kN/m²', 'si', kilo, SI, 1, 'psf'],
    ['MPa|N/mm2|N/mm²', 'si', mega, SI, 0.01, 'psi'],
  ],
  area: [
    ['in2|in²|sq in', 'us', squareInch, PRODUCT, 0.01, 'cm2'],
    ['ft2|ft²|sq ft', 'us', squareFoot, PRODUCT, 0.01, 'm2'],
    ['mm2|mm²', 'si', product(milli, milli), SI, 1, 'in2'],
    ['cm2|cm²', 'si', fraction(1n, 10_000n), SI, 0.1, 'in2'],
    ['m2|m²', 'si', one, SI, 0.01, 'ft2'],
  ],
  volume: [
    ['ft3|ft³|cu ft', 'us', cubicFoot, PRODUCT, 0.1, 'm3'],
    ['in3|in³|cu in', 'us', product(squareInch, inch), PRODUCT, 1, 'L'],
    ['yd3|yd³|cu yd', 'us', product(cubicFoot, fraction(27n)), PRODUCT, 0.1, 'm3'],
    ['gal|gallon|gallons', 'us', gallon, GALLON, 1, 'L'],
    ['L|l|liter|liters|litre|litres', 'si', liter, SI, 1, 'gal'],
    ['m3|m³', 'si', one, SI, 0.01, 'ft3'],
  ],
  duration: [
    ['s|sec|second|seconds', 'both', one, SI, 1, 's'],
    ['min|minute|minutes', 'both', fraction(60n), SI, 1, 'min'],
    ['h|hr|hrs|hour|hours', 'both', fraction(3600n), SI, 0.1, 'h'],
  ],
  density: [
    ['kg/m3|kg/m³', 'si', one, SI, 1, 'lbm/ft3'],
    ['t/m3|t/m³', 'si', kilo, SI, 0.01, 'lbm/ft3'],
    ['lbm/ft3', 'us', quotient(pound, cubicFoot), PRODUCT, 0.1, 'kg/m3'],
  ],
  'unit weight': [
    ['pcf|lb/ft3|lb/ft³', 'us', quotient(poundForce, cubicFoot), PRODUCT, 0.1, 'kN/m3'],
    ['lb/gal', 'us', quotient(poundForce, gallon), PRODUCT, 0.01, 'kN/m3'],
    ['N/m3|N/m³', 'si', one, SI, 1, 'pcf'],
    ['kN/m3|kN/m³', 'si', kilo, SI, 0.01, 'pcf'],
  ],
  stiffness: [
    ['lb/in|pli', 'us', quotient(poundForce, inch), PRODUCT, 1, 'kN/m'],
    ['lb/ft|plf', 'us', quotient(poundForce, foot), PRODUCT, 1, 'kN/m'],
    ['kip/in', 'us', quotient(kip, inch), PRODUCT, 0.1, 'kN/m'],
    ['kip/ft|klf', 'us', quotient(kip, foot), PRODUCT, 0.01, 'kN/m'],
    ['N/m', 'si', one, SI, 1, 'lb/in'],
    ['N/mm', 'si', kilo, SI, 1, 'lb/in'],
    ['kN/m', 'si', kilo, SI, 0.1, 'lb/in'],
    ['kN/mm', 'si', mega, SI, 0.01, 'kip/in'],
  ],
  moment: [
    ['lb ft|lb-ft|ft-lb|ft lb', 'us', product(poundForce, foot), PRODUCT, 1, 'kN m'],
    ['lb in|lb-in|in-lb|in lb', 'us', product(poundForce, inch), PRODUCT, 1, 'N m'],
    ['kip ft|kip-ft', 'us', product(kip, foot), PRODUCT, 0.1, 'kN m'],
    ['N m|Nm|N·m', 'si', one, SI, 1, 'lb ft'],
    ['kN m|kNm|kN·m', 'si', kilo, SI, 0.1, 'lb ft'],
  ],
};

const unitFrom = (dimension: Unit['dimension'], row: Row): Unit => {
  const [written, system, factor, source, step, counterpart] = row;
  const spellings = written.split('|');
  return { id: spellings[0] ?? '', dimension, spellings, system, factor, source, step, counterpart };
};

/** Every unit. Factors are exact wherever the unit is defined exactly. */
export const units: readonly Unit[] = Object.entries(table).flatMap(([dimension, rows]) =>
  rows.map((row) => unitFrom(dimension as Unit['dimension'], row)),
);

/** Units in which a quantity of this dimension may be written. Empty for a count: it has none. */
export const unitsOf = (dimension: Unit['dimension']): readonly Unit[] =>
  units.filter((u) => u.dimension === dimension && u.id !== '');

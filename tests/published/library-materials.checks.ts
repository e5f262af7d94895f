import { inch, psf, psi } from '@cribwright/units';
import type { Check, Subject } from './check.js';
import { planFrom } from './library-text.js';
import { published } from './sources.js';

const NDS = published('NDS Supplement 2018', 'Table 4A, compression perpendicular to grain');
const WSDD = published('AF&PA Wood Structural Design Data (1992 revisions)', 'table of species');
const DRESSED = published('NDS Supplement 2018', 'Table 1A, dry');
const PS20 = published('PS 20 as tabulated by a public engineering reference', 'timbers');
const CRANE = published('Crane-support ground table (OSHA Alliance Program)', 'rows');
const IBC = published('International Building Code 2012', 'Table 1806.2');
const CFR = published('24 CFR 3285.202', 'table');
const CHICAGO = published('Chicago Building Code 13-132-060 (archived)', 'table (a)');
const NAVFAC = published('NAVFAC DM-7.02 (1986)', 'table 1, steel against soils');
const FALSEWORK = published('BS 5975:2008 as quoted by The Concrete Society', 'steel on concrete');
const OPENSTAX = published('OpenStax University Physics, volume 1', 'table 6.1, steel on ice');
const NOON = published('Noon, traction coefficients (1994)', 'table');

/** kg/m³ in one lb/ft³, from the exact pound and foot. */
const poundPerCubicFoot = 0.45359237 / 0.3048 ** 3;

type Timber = Awaited<ReturnType<typeof planFrom>>['cribs'][number]['timber'];

const ofTimber = (
  what: string,
  name: string,
  source: Check['source'],
  expected: number,
  read: (timber: Timber) => number,
  unit: string,
): Check => ({
  what,
  source,
  expected,
  computed: async () => {
    const plan = await planFrom(
      `vehicle van : VanTrailer53\ncrib A { timber ${name} 24 in long; layout 2 by 2; courses 2; at 9 ft; captures rail }`,
    );
    const timber = plan.cribs[0]?.timber;
    return timber === undefined ? Number.NaN : read(timber);
  },
  within: 1e-6 * expected,
  unit,
});

const across = (name: string, species: string, expected: number) =>
  ofTimber(
    `${species}, perpendicular to grain`,
    name,
    NDS,
    expected,
    (t) => t.perpendicularToGrain / psi,
    'psi',
  );
const density = (name: string, species: string, expected: number) =>
  ofTimber(`${species}, density`, name, WSDD, expected, (t) => t.density / poundPerCubicFoot, 'lb/ft3');
const dressed = (name: string, size: string, source: Check['source'], expected: number) =>
  ofTimber(`${size} dressed, ${name}`, name, source, expected, (t) => t.width / inch, 'in');

type Surface = Awaited<ReturnType<typeof planFrom>>['ground']['surface'];

const ofSurface = (
  what: string,
  name: string,
  source: Check['source'],
  expected: number,
  read: (surface: Surface) => number,
  unit: string,
): Check => ({
  what,
  source,
  expected,
  computed: async () => {
    const plan = await planFrom(`ground { surface ${name} }\nvehicle van : VanTrailer53`);
    return read(plan.ground.surface);
  },
  within: 1e-6 * expected,
  unit,
});

const bears = (name: string, source: Check['source'], expected: number, unit: 'psf' | 'psi' = 'psf') =>
  ofSurface(
    `${name} bears`,
    name,
    source,
    expected,
    (s) => (s.bearing ?? Number.NaN) / (unit === 'psf' ? psf : psi),
    unit,
  );
const grip = (name: string, end: 'low' | 'high', expected: number) =>
  ofSurface(`tire on ${name}, ${end} end`, name, NOON, expected, (s) => s.frictionTire[end], '');
/** Friction of a vehicle's own metal that lies on it. */
const slides = (name: string, end: 'low' | 'high', source: Check['source'], expected: number) =>
  ofSurface(
    `steel on ${name}, ${end} end`,
    name,
    source,
    expected,
    (s) => s.frictionBody?.[end] ?? Number.NaN,
    '',
  );

export const subject: Subject = {
  subject: 'library: timber and ground',
  checks: [
    across('Fir4x4', 'Douglas fir-larch', 625),
    across('Pine4x4', 'southern pine', 565),
    across('HemFir4x4', 'hem-fir', 405),
    across('Spruce4x4', 'spruce-pine-fir', 425),
    density('Fir4x4', 'Douglas fir-larch', 33.6),
    density('Pine4x4', 'southern pine', 36.7),
    density('HemFir4x4', 'hem-fir', 29.2),
    density('Spruce4x4', 'spruce-pine-fir', 28.5),
    density('Oak4x4', 'mixed oak', 44.7),
    dressed('Fir4x4', '4x4', DRESSED, 3.5),
    dressed('Fir6x6', '6x6', PS20, 5.5),
    dressed('Fir8x8', '8x8, dry', PS20, 7.25),
    bears('asphalt', CRANE, 29, 'psi'),
    bears('concrete', CRANE, 1000, 'psi'),
    bears('crushed-stone', CRANE, 36, 'psi'),
    bears('firm-gravel', CRANE, 58, 'psi'),
    bears('gravel', CFR, 2000),
    bears('gravel-by-building-code', IBC, 3000),
    bears('sand', CFR, 1500),
    bears('clay', IBC, 1500),
    bears('soft-clay', CHICAGO, 500),
    grip('asphalt', 'low', 0.5),
    grip('asphalt', 'high', 0.65),
    grip('concrete', 'low', 0.6),
    grip('concrete', 'high', 0.75),
    grip('gravel', 'low', 0.35),
    grip('snow', 'low', 0.2),
    grip('snow', 'high', 0.25),
    grip('ice', 'low', 0.1),
    grip('ice', 'high', 0.15),
    grip('lawn', 'low', 0.2),
    slides('concrete', 'low', FALSEWORK, 0.1),
    slides('concrete', 'high', FALSEWORK, 0.5),
    slides('gravel', 'low', NAVFAC, 0.25),
    slides('gravel', 'high', NAVFAC, 0.4),
    slides('crushed-stone', 'low', NAVFAC, 0.3),
    slides('crushed-stone', 'high', NAVFAC, 0.4),
    slides('sand', 'low', NAVFAC, 0.25),
    slides('sand', 'high', NAVFAC, 0.3),
    slides('ice', 'high', OPENSTAX, 0.04),
  ],
};

import { foot } from '@cribwright/units';
import { lb } from '@cribwright/units/internal';
import type { Check, Subject } from './check.js';
import { planFrom } from './library-text.js';
import { published } from './sources.js';

const TABLE = published('AASHTO Green Book 2018', 'Table 2-4a, design vehicles');
const WB62 = published('AASHTO Green Book 2018', 'design vehicle WB-62');
const WB67 = published('AASHTO Green Book 2018', 'design vehicle WB-67');

type Vehicle = Awaited<ReturnType<typeof planFrom>>['vehicles'][number];

const ofVehicle = (
  what: string,
  type: string,
  source: Check['source'],
  expected: number,
  read: (vehicle: Vehicle) => number,
): Check => ({
  what: `${what}, ${type}`,
  source,
  expected,
  computed: async () => {
    const vehicle = (await planFrom(`vehicle van : ${type}`)).vehicles[0];
    return vehicle === undefined ? Number.NaN : read(vehicle) / foot;
  },
  // The figures print tenths of a foot; the library keeps whole inches.
  within: 0.05,
  unit: 'ft',
});

const axle = (v: Vehicle, number: number): number => v.axles[number - 1]?.x ?? Number.NaN;
const kingpin = (v: Vehicle): number => v.parts.find((p) => p.id === 'kingpin')?.from ?? Number.NaN;
const tandem = (v: Vehicle, first: number): number => (axle(v, first) + axle(v, first + 1)) / 2;

/** Cargo of one cubic foot, so that its weight is its unit weight. */
const cargo = (
  type: string,
  source: string,
  locator: string,
  expected: number,
  end: 'low' | 'high' = 'high',
): Check => ({
  what: `${type} weighs, ${end} end`,
  source: published(source, locator),
  expected,
  computed: async () => {
    const plan = await planFrom(`vehicle van : VanTrailer53 { cargo 1 ft3 of ${type} from 10 ft to 20 ft }`);
    return (plan.vehicles[0]?.cargo[0]?.weight[end] ?? Number.NaN) / lb;
  },
  within: 0.05,
  unit: 'lb/ft3',
});

const GUIDE = 'Densities of common materials (residential design guide)';
const ASCE = 'ASCE 7';
const BULK = 'Bulk density data sheet';

export const subject: Subject = {
  subject: 'library: vehicles and cargo',
  checks: [
    ofVehicle('length', 'StraightTruck', TABLE, 30, (v) => v.length),
    ofVehicle('width', 'StraightTruck', TABLE, 8, (v) => v.width),
    ofVehicle('front overhang', 'StraightTruck', TABLE, 4, (v) => axle(v, 1)),
    ofVehicle('rear overhang', 'StraightTruck', TABLE, 6, (v) => v.length - axle(v, 2)),
    ofVehicle('width', 'VanTrailer53', TABLE, 8.5, (v) => v.width),
    ofVehicle('height', 'VanTrailer53', TABLE, 13.5, (v) => v.height),
    ofVehicle('trailer length', 'VanTrailer53', WB67, 53, (v) => v.length),
    ofVehicle('kingpin behind the front', 'VanTrailer53', WB67, 3, kingpin),
    ofVehicle('kingpin to tandem', 'VanTrailer53', WB67, 45.5, (v) => tandem(v, 1) - kingpin(v)),
    ofVehicle('rear overhang from tandem', 'VanTrailer53', WB67, 4.5, (v) => v.length - tandem(v, 1)),
    ofVehicle('trailer length', 'VanTrailer48', WB62, 48, (v) => v.length),
    ofVehicle('kingpin behind the front', 'VanTrailer48', WB62, 2.5, kingpin),
    ofVehicle('kingpin to tandem', 'VanTrailer48', WB62, 41, (v) => tandem(v, 1) - kingpin(v)),
    ofVehicle('tandem spacing', 'VanTrailer48', WB62, 4, (v) => axle(v, 2) - axle(v, 1)),
    ofVehicle('rear overhang from tandem', 'VanTrailer48', WB62, 4.5, (v) => v.length - tandem(v, 1)),
    ofVehicle('front overhang', 'SleeperTractor', WB67, 4, (v) => axle(v, 1)),
    ofVehicle('steer to first drive axle', 'SleeperTractor', WB62, 17.4, (v) => axle(v, 2) - axle(v, 1)),
    ofVehicle('steer to tandem center', 'SleeperTractor', WB67, 19.5, (v) => tandem(v, 2) - axle(v, 1)),
    ofVehicle('tractor tandem spacing', 'SleeperTractor', WB62, 4.2, (v) => axle(v, 3) - axle(v, 2)),
    cargo('Water', GUIDE, 'table', 62.4),
    cargo('Steel', GUIDE, 'table', 492),
    cargo('Aluminum', GUIDE, 'table', 170),
    cargo('Aluminum', 'OpenStax University Physics, volume 1', 'Table 14.1', 168.6, 'low'),
    cargo('Concrete', GUIDE, 'table', 150),
    cargo('Concrete', GUIDE, 'table', 145, 'low'),
    cargo('Gravel', GUIDE, 'table, dry', 105),
    cargo('Sand', GUIDE, 'table, dry', 90),
    cargo('Plywood', GUIDE, 'table', 36),
    cargo('GypsumBoard', GUIDE, 'table', 48),
    cargo('Glass', GUIDE, 'table', 160),
    cargo('SpruceLumber', GUIDE, 'table, 10 % moisture', 29),
    cargo('FirLumber', GUIDE, 'table, 10 % moisture', 34),
    cargo('GranitePiled', GUIDE, 'table, in bulk', 96),
    cargo('GraniteSolid', 'OpenStax University Physics, volume 1', 'Table 14.1', 168.6),
    cargo('Gasoline', ASCE, 'Table C3-2', 42, 'low'),
    cargo('CrudeOil', ASCE, 'Table C3-2', 55),
    cargo('Asphaltum', ASCE, 'Table C3-2', 81),
    cargo('Cement', ASCE, 'Table C3-2, loose', 90, 'low'),
    cargo('Coal', ASCE, 'Table C3-2, piled', 47),
    cargo('Barley', BULK, 'table', 38),
    cargo('Apples', BULK, 'table', 40),
    cargo('Butter', BULK, 'table', 54),
    cargo('Brick', BULK, 'table', 120),
    cargo('MixedFreight', 'FHWA Comprehensive Truck Size and Weight Limits Study', 'figure D1', 7.5, 'low'),
    cargo('MixedFreight', 'FHWA Comprehensive Truck Size and Weight Limits Study', 'figure D1', 18.5),
  ],
};

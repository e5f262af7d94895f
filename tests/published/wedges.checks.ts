import { driveForce, keepForce, steepestTaper, type Wedge } from '@cribwright/engine';
import type { Subject } from './check.js';
import { closedForm, published } from './sources.js';

const STATICS = (locator: string) =>
  published('Baker and Haynes, Engineering Statics: Open and Interactive', locator);
const degree = Math.PI / 180;

/** A wedge of 25 deg under a block of 10 lb, friction 0.20 on both faces, the wedge without weight. */
const wedge: Wedge = { taper: 25 * degree, slopeFriction: 0.2, flatFriction: 0.2 };
const load = 10;

export const subject: Subject = {
  subject: 'Wedges',
  checks: [
    {
      what: 'Wedge of 25 deg under 10 lb, friction 0.20: push that raises the block',
      source: STATICS('chapter 9, wedge example, answer P'),
      expected: 9.35,
      within: 0.005,
      unit: 'lb',
      computed: () => driveForce(wedge, load),
    },
    {
      what: 'The same: force square to the slope, from the push less friction underneath, level on the wedge',
      source: STATICS('chapter 9, wedge example, N2'),
      expected: 12.17,
      within: 0.005,
      unit: 'lb',
      computed: () =>
        (driveForce(wedge, load) - wedge.flatFriction * load) /
        (Math.sin(wedge.taper) + wedge.slopeFriction * Math.cos(wedge.taper)),
    },
    {
      // The book prints 0.94 lb for this, its solution left to the reader; its own equations turned round give 0.44.
      what: 'The same: push that keeps it from slipping out',
      source: closedForm('N = 10 ÷ (cos 25° + 0.2 sin 25°); N (sin 25° − 0.2 cos 25°) − 0.2 × 10'),
      expected:
        (load * (Math.sin(wedge.taper) - 0.2 * Math.cos(wedge.taper))) /
          (Math.cos(wedge.taper) + 0.2 * Math.sin(wedge.taper)) -
        0.2 * load,
      within: 1e-9,
      unit: 'lb',
      computed: () => keepForce(wedge, load),
    },
    {
      what: 'Steepest wedge that stays by itself, friction 0.20 on both faces',
      source: closedForm('tan(2φ) = 2μ ÷ (1 − μ²) with μ = 0.20: arctan(0.40 ÷ 0.96)'),
      expected: Math.atan(0.4 / 0.96) / degree,
      within: 1e-9,
      unit: 'deg',
      computed: () => steepestTaper(wedge) / degree,
    },
  ],
};

import { columnStability, eulerLoad, slenderness, strutFailureLoad, tube } from '@cribwright/engine';
import type { Check, Subject } from './check.js';
import { type AnyReference, closedForm, published } from './sources.js';

const psi = 4.4482216152605 / 0.0254 ** 2;
const HUD = published(
  'HUD Residential Structural Design Guide, 2nd edition (2017)',
  'example 5.6, as tested in xcfem/xc',
);
const AWC = published('AWC Structural Wood Design Examples 2015/2018', 'example E1.8, as tested in xcfem/xc');
const BUILT_UP = published(
  'Aghayere and Vigil, Structural Wood Design (2007)',
  'example 5.7, as tested in xcfem/xc',
);
const HIBBELER = published('Mechanics of materials textbook', 'chapter 13 (Columns), example 13.1');

/** Stresses in psi, lengths in inches. */
const cp = (fc: number, eMin: number, length: number, depth: number, factor = 1): number =>
  columnStability(fc * psi, eMin * psi, slenderness(length, depth), factor);

const stability = (
  what: string,
  expected: number,
  within: number,
  computed: () => number,
  source: AnyReference,
): Check => ({
  what,
  source,
  expected,
  within,
  unit: '',
  computed,
});

// 4×4 spruce-pine-fir No. 2, 7.3 ft: Fc 1150 psi × CF 1.15, Emin 510,000 psi.
const hud = () => cp(1150 * 1.15, 510_000, 7.3 * 12, 3.5);
// 2×4 southern pine No. 2, 3 ft, bends about its weak axis: Fc 1450 psi × CD, Emin 510,000 psi.
const awc = (duration: number) => cp(1450 * duration, 510_000, 36, 1.5);
// Three 2×6 Douglas fir-larch No. 1, 12 ft: Fc 1500 psi × CF 1.1, Emin 620,000 psi, 4.5 in through the plies.
const builtUp = (factor: number) => cp(1500 * 1.1, 620_000, 144, 4.5, factor);
const steel = { modulus: 200e9, yield: 250e6, ...tube(0.075, 0.07) };

export const subject: Subject = {
  subject: 'Columns (NDS 3.7.1, Euler)',
  checks: [
    stability('Cp, 4×4, 7.3 ft', 0.43783, 5e-6, hud, HUD),
    {
      what: 'stress allowed parallel to grain, 4×4, 7.3 ft',
      source: HUD,
      expected: 3.9922697,
      within: 5e-5,
      unit: 'MPa',
      computed: () => (hud() * 1150 * 1.15 * psi) / 1e6,
    },
    stability('use at 4,800 lb, 4×4, 7.3 ft', 0.67671, 5e-6, () => 4800 / (hud() * 1150 * 1.15 * 12.25), HUD),
    stability('Cp, 2×4, 3 ft, CD 1.6', 0.29, 5e-3, () => awc(1.6), AWC),
    stability('Cp, 2×4, 3 ft, CD 1.15', 0.387, 5e-3, () => awc(1.15), AWC),
    stability('Cp, 2×4, 3 ft, CD 0.9', 0.473, 5e-3, () => awc(0.9), AWC),
    stability('Cp, three 2×6, 12 ft, as a solid post', 0.279878, 1e-4, () => builtUp(1), BUILT_UP),
    stability('Cp, three 2×6, 12 ft, nailed (Kf 0.6)', 0.167927, 1e-4, () => builtUp(0.6), BUILT_UP),
    stability(
      'Cp of a very slender post against FcE / Fc*',
      1,
      1e-3,
      () => cp(1350, 580_000, 3500 * 3.5, 3.5) / ((0.822 * 580_000) / 3500 ** 2 / 1350),
      closedForm('as le/d grows, the root of the NDS parabola tends to FcE / Fc*'),
    ),
    stability(
      'Cp of a post without length',
      1,
      1e-12,
      () => cp(1350, 580_000, 0, 3.5),
      closedForm('no length, no buckling'),
    ),
    {
      what: 'Euler load of a 75/70 mm tube, 7.2 m',
      source: HIBBELER,
      expected: 228.2,
      within: 0.05,
      unit: 'kN',
      computed: () => eulerLoad(steel.modulus, steel.inertia, 7.2) / 1000,
    },
    {
      what: 'stress at the Euler load of a 75/70 mm tube',
      source: HIBBELER,
      expected: 100.2,
      within: 0.05,
      unit: 'MPa',
      computed: () => eulerLoad(steel.modulus, steel.inertia, 7.2) / steel.area / 1e6,
    },
    {
      what: 'Euler load, E 30e6 psi, I 0.05 in4, 50 in',
      source: published('Euler and Johnson column worked example', 'section 3'),
      expected: 5922,
      within: 0.5,
      unit: 'lb',
      computed: () => eulerLoad(30e6, 0.05, 50),
    },
    {
      what: 'failure load of the 75/70 mm tube, 0.5 m: yield × area, not Euler',
      source: closedForm('250 MPa × π (75² − 70²) mm² = 569.4 kN'),
      expected: 569.4,
      within: 0.05,
      unit: 'kN',
      computed: () => strutFailureLoad(steel, 0.5) / 1000,
    },
  ],
};

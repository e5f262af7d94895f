/**
 * A plan with one mistake in it, to be found and put right: crib A captures too little for its height. The
 * walkthrough ends when its last line holds. Every name and number is invented.
 */
export const firstPlan = `// Alder Ridge County: every name and number here is invented.
use "library/vehicles.crib"

plan "My first plan" {
  ground {
    surface concrete
    grade   0 %
  }

  vehicle trailer : VanTrailer53 {
    cargo      6,000 to 8,000 lb from 4 ft to 48 ft height 72 to 96 in
    brakes     set
    coupled to tractor
  }
  vehicle tractor : DayCabTractor { at -16 ft, center }
  chock K1 { under trailer; holds both directions }
  chock K2 { under tractor axle 2; holds both directions }
  chock K3 { under tractor axle 3; holds both directions }

  size up {
    fuel    "none on the trailer"
    battery "none on the trailer"
    cargo   "paper on pallets"
    brakes  "spring brakes set"
  }

  crib A {
    timber   Fir4x4 24 in long
    layout   2 by 2
    base     solid
    courses  11
    wedges   4 pairs
    at       19 ft 6 in, driver side 3 ft 6.75 in
    captures rail
  }
  crib B {
    timber   Fir4x4 24 in long
    layout   2 by 2
    base     solid
    courses  11
    wedges   4 pairs
    at       19 ft 6 in, passenger side 3 ft 6.75 in
    captures rail, joists
  }

  steps {
    1  size up trailer     crew 1  takes 2 min
    2  chock   K1, K2, K3  crew 1  takes 2 min
    3  build   A, B        crew 4  takes 8 min
  }
}
`;

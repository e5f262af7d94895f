/**
 * A plan with one unsafe height in it, to be found and put right. The walkthrough ends when its last line holds.
 * Every name and number is invented.
 */
export const firstPlan = `// Alder Ridge County: every name and number here is invented.
use "library/vehicles.crib"

plan "My first plan" {
  ground {
    surface asphalt
    grade 0 %
  }

  vehicle trailer : VanTrailer53 {
    cargo 20,000 to 24,000 lb from 4 ft to 48 ft
  }

  crib A {
    timber Fir4x4 24 in long
    layout 2 by 2
    base solid
    courses 14
    at 21 ft, driver side 3 ft 4 in
    captures rail
  }
}
`;

/** Where a piece of plan may stand, so that a case shows only what it is about. `@` is the piece. */
export const settings: Readonly<Record<string, string>> = {
  '': '@',
  plan: `use "library/vehicles.crib"
use "library/gear.crib"
plan "Case" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53 {
    cargo 20,000 lb from 4 ft to 48 ft
  }
@}
`,
  crib: `use "library/vehicles.crib"
plan "Case" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53
  crib A {
@  }
}
`,
  steps: `use "library/vehicles.crib"
plan "Case" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53
  crib A {
    timber Fir4x4 24 in long
    layout 2 by 2
    courses 11
    at 20 ft, driver side 3 ft 6 in
    captures rail, joists
  }
  steps {
@  }
}
`,
  vehicle: `use "library/vehicles.crib"
vehicle type Case : SemiTrailer {
@}
`,
  axle: `vehicle type Case {
  axle 1 {
@  }
}
`,
  policy: `policy Case : Shipped {
@}
`,
  ground: `use "library/vehicles.crib"
plan "Case" {
  vehicle trailer : VanTrailer53
  ground {
@  }
}
`,
};

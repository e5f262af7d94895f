/** Small files that tests of features build on. Invented. */
export const fleet = `use "library/vehicles.crib"

// The county's own trailer.
vehicle type CountyTrailer : VanTrailer53 "county trailer" {
  height 13 ft
}

vehicle type CountyReefer : CountyTrailer "county reefer" {
  height 13 ft 4 in
}
`;

export const pairs = `pattern PairUnder(rail: part, reach: length) {
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    courses   6
    at        reach, driver side 3 ft 4 in
    captures  rail
  }
}
`;

export const trailerPlan = `use "library/vehicles.crib"
use "fleet.crib"

plan "Trailer by the scale house" {
  ground {
    surface asphalt
  }

  vehicle trailer : CountyTrailer {
    cargo 36,000 lb  from 4 ft to 48 ft
  }

  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    courses   14
    at        21 ft, driver side 3 ft 4 in
    captures  rail
  }

  steps {
    1  chock  trailer both directions  crew 1  takes 1 min
    2  build  A                        crew 2  takes 5 min
  }
}
`;

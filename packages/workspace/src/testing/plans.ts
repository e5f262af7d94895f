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

/**
 * A trailer with its tractor and a crib on each side, in which nothing is unsafe.
 *
 * @param courses of crib A; it reaches with 11
 * @param chocked whether the trailer's own wheels are chocked
 */
export const scaleHousePlan = (courses = 11, chocked = true): string => {
  const crib = (name: string, built: number, side: string) => `  crib ${name} {
    timber    Fir4x4 24 in long
    layout    2 by 2
    base      solid
    courses   ${built}
    wedges    4 pairs
    at        19 ft 6 in, ${side} side 3 ft 6.75 in
    captures  rail, joists
  }`;
  const steps = [
    ...(chocked ? ['chock  trailer both directions  crew 1  takes 1 min'] : []),
    'chock  tractor both directions  crew 1  takes 1 min',
    'build  A, B  crew 4  takes 5 min',
  ];
  return `use "library/vehicles.crib"

plan "Trailer by the scale house" {
  ground { surface asphalt; grade 1 % toward rear }
  vehicle trailer : VanTrailer53 {
    brakes set
    cargo 6,000 lb from 4 ft to 48 ft height 72 to 96 in
    coupled to tractor
  }
  vehicle tractor : DayCabTractor {
    at -16 ft, center
    brakes set
  }
  chock K2 { under tractor axle 2; holds both directions }
  chock K3 { under tractor axle 3; holds both directions }
${crib('A', courses, 'driver')}
${crib('B', 11, 'passenger')}
  steps {
${steps.map((step, i) => `    ${i + 1}  ${step}`).join('\n')}
  }
}
`;
};

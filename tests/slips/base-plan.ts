/** What a crew wrote right: nothing in it is unsafe, and every slip of the corpus is one change of it. Invented. */
export const basePlan = `// Alder Ridge County, north lot of the scale house
use "library/vehicles.crib"
use "library/gear.crib"
use "caches/rescue-12.crib"

plan "Van trailer at the scale house" {
  responding  Rescue12

  ground {
    surface  concrete
    grade    0 %
  }

  vehicle trailer : VanTrailer53 {
    cargo   "paper rolls" 16,000 to 20,000 lb from 6 ft to 46 ft height 6 to 8 ft
    brakes  set
  }

  size up {
    fuel     "none on the trailer"
    battery  "none on the trailer"
    cargo    "paper rolls, banded"
    brakes   "spring brakes set"
  }

  chock K1 { under trailer; holds both directions }

  let reach = 12 ft 6 in

  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    base      solid
    courses   11
    wedges    4 pairs
    at        reach, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    base      solid
    courses   11
    wedges    4 pairs
    at        reach, passenger side 3 ft 6.75 in
    captures  rail, joists
  }

  strut S1 : Strut4to8ft {
    head  trailer rail near 24 ft, driver side
    base  3 ft 2 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 24 ft, passenger side
    base  3 ft 2 in out
    lock  pinned
  }
  pad P1 {
    size       2 ft by 2 ft
    thickness  0.5 in
    material   steel
    under      S1
  }
  pad P2 {
    size       2 ft by 2 ft
    thickness  0.5 in
    material   steel
    under      S2
  }
  chain T1 : Chain43_1_2in { from S1 base to S2 base }

  egress W1 {
    from  30 ft, driver side 6 ft
    to    30 ft, driver side 20 ft
  }

  steps {
    1  size up  trailer  crew 1  takes 2 min
    2  chock    K1       crew 1  takes 1 min
    3  build    A, B     crew 4  takes 6 min
    4  set      S1, S2   crew 2  takes 3 min
    5  lock     S1, S2   crew 1  takes 1 min
    6  tension  T1       crew 1  takes 1 min
  }

  expect safe
}
`;

/** The cache that the plan uses. */
export const cacheFile = `use "library/gear.crib"

cache Rescue12 "Rescue 12" {
  staffing  4
  60        Fir4x4  24 in long
  24        wedge pairs
  4         wheel chocks
  4         Strut4to8ft
  4         pads  2 ft by 2 ft
  2         Chain43_1_2in
}
`;

// Written by build/embed-pages.mjs. Do not edit.
/** Every rule's page: rule id to Markdown. */
export const rulePages: Readonly<Record<string, string>> = {
  'acceptance-expired': `# acceptance-expired: acceptance expired

## What it protects against

An acceptance with an end date is not valid after that date.

## Calculation

    today ≤ date in the line

If today's date is not known, the acceptance does not count. The check then reports that it could not run.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Accepted long ago" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "wall on the other side" by "training captain" until 2020-01-31 // acceptance-expired
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Accepted for now" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "wall on the other side" by "training captain" until 2099-01-31
}
\`\`\`
`,
  'air-spring-free': `# air-spring-free: cab left on its air springs

## What it protects against

A sleeper cab sits on rubber mounts in front and on air springs in the rear. It sways while tools work, and drops when an air line is cut or the air leaks out.

## Calculation

The cab is analyzed as a separate body. At least one crib or strut of the finished plan must reach the cab and support it. A crib that stops short of the cab does not count.

Build cribs between the cab and the frame, on both sides, or set side struts under the cab. Those struts carry the cab only, not the tractor.

## Sources

- Movement of a cab on air springs, and how to support it: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Cab on air" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle tractor : SleeperTractor // air-spring-free
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Cab on timber" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle tractor : SleeperTractor
  crib A {
    timber    Fir4x4 18 in long
    layout    2 by 2
    base      open
    courses   5
    wedges    4 pairs
    at        12 ft, driver side 17 in
    stands on tractor frame
    captures  floor
  }
  crib B {
    timber    Fir4x4 18 in long
    layout    2 by 2
    base      open
    courses   5
    wedges    4 pairs
    at        12 ft, passenger side 17 in
    stands on tractor frame
    captures  floor
  }
}
\`\`\`
`,
  'axle-overweight': `# axle-overweight: axle load over the legal limit

## What it protects against

A wrong weight or position in the plan makes every other figure wrong. An axle load over the legal limit is more often a typing error than an overweight truck. If the weights are right, the truck is overweight, and you need to know that too.

This rule checks the data in the plan, not the stabilization.

## Calculation

The lever rule divides the cargo between two groups of axles, or between a kingpin and one group. Every group of consecutive axles is then compared with its limit, including groups inside larger groups:

    one axle, or axles within 40 in       20,000 lb
    axles within 96 in                    34,000 lb
    more: 500 × (L × N ÷ (N − 1) + 12 × N + 36), to the nearest 500 lb, ties down
    two tandems, 36 ft first to last      34,000 lb each
    the whole truck                       80,000 lb

L is the distance between the outer axles in whole feet, N the number of axles.

## Sources

- Limits and formula: 23 CFR 658.17.
- Two tandems 36 ft apart: 23 U.S.C. 127(a).
- Ties: the table of California Vehicle Code 35551 rounds down, that of 67 Pa. Code 185.3 rounds up. The lower is taken.

A department's policy may set other limits for a single axle, a tandem and the whole truck.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One zero too many" {
  vehicle truck : StraightTruck {
    cargo "pallets" 90,000 lb from 9 ft to 29 ft // axle-overweight
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A full truck" {
  vehicle truck : StraightTruck {
    cargo "pallets" 9,000 lb from 9 ft to 29 ft
  }
}
\`\`\`
`,
  'cache-short': `# cache-short: more needed than units carry

## What it protects against

A crib that is short four timbers is built lower, or with whatever is at hand.

## Calculation

    timbers = courses × timbers in a course      11 × 2 = 22
    short   = needed at peak − carried

The peak is the moment in the plan when the most pieces are in use. When a step removes a support, its pieces can be used again.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  12 Fir4x4 24 in long
  8 wedge pairs
}

plan "Ten timbers short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A { // cache-short
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Enough" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'cache-unknown': `# cache-unknown: cache not known

## What it protects against

A plan that no unit can supply fails on scene.

## Calculation

None. The plan must name the responding units, and each unit's cache must list its equipment.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Units not stated" { // cache-unknown
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  staffing 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Pine 2 responds" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  responding Pine2
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'count-mismatch': `# count-mismatch: counts that contradict each other

## What it protects against

A timber that is counted twice is there only once.

## Calculation

None. A cache lists each item once, and only one step builds each support.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Built twice" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build A // count-mismatch
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Built once" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 check A
  }
}
\`\`\`
`,
  'crew-short': `# crew-short: not enough personnel

## What it protects against

A plan that needs more personnel than are on scene is built in a hurry, or only in part.

## Calculation

    peak   = people on the steps that run at the same time, added
    peak ≤ staffing

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Six for four" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crew 4 people
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A  crew 6  takes 5 min // crew-short
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Three for four" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crew 4 people
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A  crew 3  takes 5 min
  }
}
\`\`\`
`,
  'crib-alignment': `# crib-alignment: contacts out of line, or a sloped capture

## What it protects against

A load that does not go straight down bends the timbers and pushes the crib over.

## Calculation

    distance from a contact to the part below it ≤ contact alignment (1 in)
    slope of the captured part                   ≤ steepest capture (10 deg)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Beside the frame" {
  vehicle tractor : SleeperTractor
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   3
    wedges    1 pair, 0.5 to 2 in
    at        11 ft, driver side 3 ft
    captures  tractor floor
    stands on tractor frame // crib-alignment
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "On the ground" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-base': `# crib-base: base that sinks or overhangs its pad

## What it protects against

On soft ground two base timbers sink unevenly and tip the crib.

## Calculation

None. On ground that is not paved, a crib needs a solid base, or a pad at least as long as its timbers.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Open base on sand" {
  ground { surface sand }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      open // crib-base
  }
}
\`\`\`

\`\`\`crib fixed
    base      solid
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Solid base on sand" {
  ground { surface sand }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
}
\`\`\`
`,
  'crib-clash': `# crib-clash: two things in the same place

## What it protects against

A support that cannot be built as planned is built another way, and that way is not checked.

## Calculation

These pairs must not overlap, seen from above and over their heights: two cribs, a crib and a vehicle body, a crib and a wheel, a strut and a crib. A crib takes up the full length of its timbers in both directions.

Two vehicles must not run into each other either. Where the plan says that one bears on the other, or is coupled to it, their bodies may meet; their wheels never do. A car's roof is solid, and what is no higher than its tires. Where only a hood or a trunk may be in the way, whose height is not in the plan, that is a warning.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One foot apart" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in // crib-clash
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A car in the floor of a trailer" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft // crib-clash
    heading  across to passenger side
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Well apart" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A car that the trailer rests on" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    bears    trailer at rail from 23 ft 6 in to 26 ft 6 in
    area roof {
      height 40 in  source stated
    }
  }
}
\`\`\`
`,
  'crib-eccentric': `# crib-eccentric: crib loaded on one side

## What it protects against

A crib loaded off center leans to that side, and only the loaded contacts carry.

## Calculation

    distance from the center of the crib to the center of the loaded contacts ≤ width ÷ 6

## Sources

- Middle-third rule (no side of the base lifts while the load is within width ÷ 6 of the center): from memory.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Rail alone" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   6
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail // crib-eccentric
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Rail and joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-height': `# crib-height: crib too tall for its width

## What it protects against

A crib that is tall and narrow sways under load and tips over without warning. It sways sooner when only one side is loaded.

## Calculation

The width is measured from outside to outside of the contacts, not over the full timber:

    width = timber length − 2 × overhang            24 in − 2 × 4 in = 16 in
    limit = ratio × width

The policy sets the ratio: 3 with all contacts loaded, 1.5 with some, 1 with one. The height is courses × dressed depth. Wedges and shims do not count.

## Sources

- 3 and 1.5: common practice, no source.
- 1 on one contact: from memory, US Army Corps of Engineers Shoring Operations Guide, section 2.

A department's policy may set other ratios, with its own source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Too tall on two contacts" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   14 // crib-height
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail
  }
}
\`\`\`

\`\`\`crib fixed
    courses   6
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "All four contacts captured" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-layout': `# crib-layout: courses that cannot be built

## What it protects against

A crib with one timber in a course rolls over. A crib with more timbers than fit cannot be built as drawn.

## Calculation

    timbers × dressed width ≤ width outside to outside of the contacts      4 × 3.5 in ≤ 16 in

The minimum is 2 timbers in every course.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Five where four fit" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    5 by 2 // crib-layout
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    layout    4 by 2
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Two by two" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-load': `# crib-load: crib or contact overloaded

## What it protects against

Timber loaded beyond its capacity perpendicular to grain crushes. The load leans and falls.

## Calculation

    contact     = stress perpendicular to grain × crossing, rounded down      500 psi × 3.5 in × 3.5 in → 6,000 lb
    crib        = loaded contacts × contact                                   4 × 6,000 lb = 24,000 lb
    utilization = load ÷ capacity

The load is the worst case over:

- every step of the plan
- the loss of each support that was there before the crew
- the full range of weights and positions

The finding names the worst case. The worst case can lie inside a range, where other contacts begin to carry. The rule also checks positions inside the range. The load between two checked positions can be slightly higher.

On a grade, and in a vehicle that is pitched, the line of the weight moves height × grade toward the low side of the center of gravity. A height that is not stated may be anything from the ground to the roof.

The loads of \`load\` lines count once everything is in place. The policy selects the stress: the flat rule, the value of the species, or the lesser of the two.

## Sources

- 24,000 lb on four contacts of 4×4: Rescue Systems 1 (California State Fire Training), chapter 30.
- Species, wet timber and bearing length: NDS 2018, 3.10.2 and 3.10.4; NDS Supplement 2018, Table 4A.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One crib for a heavy end" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 60,000 to 64,000 lb from 4 ft to 48 ft
  }
  crib A { // crib-load
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        12 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A light trailer on the same crib" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 4,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-mixed-timber': `# crib-mixed-timber: cribs of different timber under one vehicle

## What it protects against

The stiffer crib takes load that the softer crib should share.

## Calculation

    stiffness = modulus perpendicular to grain × crossing ÷ height

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Fir and oak" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Oak4x4 24 in long // crib-mixed-timber
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Fir and fir" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-overhang': `# crib-overhang: timber ends too short or too long past the contacts

## What it protects against

Short ends split off and let the timbers walk out. Long ends narrow the base and lower the height limit.

## Calculation

    least overhang ≤ overhang ≤ most overhang

The policy sets both: at least 4 in, at most 6 in.

## Sources

- 4 in on a 4×4: common practice, no source. Rescue Systems 1 (California State Fire Training), chapter 30, asks for about the size of the timber.
- 6 in: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Ends too short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  2 in // crib-overhang
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    overhang  4 in
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Ends long enough" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-packing': `# crib-packing: too much packing on a crib

## What it protects against

A pile of loose shims slides out or tips over when the load moves. Courses lock into each other; shims do not.

## Calculation

    shims ≤ most shims (2 in)
    shims + gap that the wedges close ≤ most packing (4 in)

The wedges close the gap left above the shims. If they do not reach that far, their full travel counts. If the gap needs more shims than the limit allows, the fix offers courses.

## Sources

- Both limits: common practice, no source. A department's policy may set its own.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "A tower of shims" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    shims     31.5 in // crib-packing
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    courses   11
    shims     0 in
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Courses, and wedges on them" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-reach': `# crib-reach: crib does not reach, or does not fit under, what it captures

## What it protects against

A crib that stops short of the load carries nothing until the load drops onto it. A crib that is too tall cannot be built.

## Calculation

    gap = underside of the part − top of what the crib stands on − courses × dressed depth − shims

The gap must be no more than the wedges can close, and no less than the wedges need to fit. If the height of the part is a range, both ends of the range must pass.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Three courses short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   8 // crib-reach
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    courses   11
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Wedged up to the rail" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'crib-wedge': `# crib-wedge: contact without wedges, or wedges opened too far

## What it protects against

A contact that is not snug carries nothing until the load has moved.

## Calculation

    pairs of wedges          ≥ loaded contacts
    gap that each pair closes ≤ wedge travel (2 in)

## Driven wedges

If the wedges of a crib have a stated preload, the crib shows two more figures.

    steepest wedge that stays by itself       = arctan(friction between the wedges) + arctan(least friction on their outer faces)
    least push on each end of a pair of wedges = preload ÷ pairs × (friction between the wedges + least friction on their outer faces)

With a friction of 0.45 between timbers and 0.3 against metal, the first is 40 degrees. A wedge cut 4 in high over 18 in rises 12 degrees, and stays. Ice, grease or vibration from traffic can make a driven wedge slip. Nail or block driven wedges. A plan does not state how steep the wedges are cut, so no check compares it.

## Sources

- Common practice, no source.
- Driven wedges: Baker and Haynes, Engineering Statics: Open and Interactive, chapter 9, wedges.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "One pair for four contacts" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in // crib-wedge
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib fixed
    wedges    4 pairs
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A pair for each" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'egress-blocked': `# egress-blocked: egress blocked, narrow or missing

## What it protects against

A rescuer who kneels at the vehicle must be able to leave at once, without looking where to step.

## Calculation

The egress is a path of the stated width. It must be clear of everything that is higher than 6 in and lower than 6 ft, and no strap may cross it.

    width ≥ egress width (3 ft)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Through the crib" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  egress Back { // egress-blocked
    from 19 ft 6 in, driver side 3 ft
    to   19 ft 6 in, driver side 20 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Beside the crib" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  egress Back {
    from 25 ft, driver side 6 ft
    to   25 ft, driver side 20 ft
  }
}
\`\`\`
`,
  'expectation-unmet': `# expectation-unmet: plan does not meet its expectations

## What it protects against

A plan that was right when it was written may no longer be right.

## Calculation

The rule compares each expectation with the results:

    expect safe                                no danger, and no check that could not run
    expect crib-height on A                    that rule reports a finding on A
    expect height on A 38.5 in                 that figure is 38.5 in, within the percentage after \`within\`

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Not as tall as expected" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  expect height on A 42 in // expectation-unmet
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "As tall as expected" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  expect height on A 38.5 in
}
\`\`\`
`,
  'geometry-impossible': `# geometry-impossible: impossible sizes or positions

## What it protects against

A wrong number in the plan makes every later figure wrong.

## Calculation

None. Parts, axles and cargo must be inside their vehicle. A vehicle that rests on another must touch it at the stated place.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Longer than the trailer" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 68 ft // geometry-impossible
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Within the trailer" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  'grade-slide': `# grade-slide: slides down the grade

## What it protects against

On a grade the weight pulls downhill. Chocks on too few wheels slide with the vehicle.

## Calculation

    pull downhill = weight × sin(grade)             40,000 lb × sin(atan 3 %) = 1,199 lb
    hold          = friction × load on the wheels that cannot roll downhill

The weight is the heavy end of its range. The load on the chocked wheels is the lowest that the ranges allow, in the finished plan. Cribs that are only snug carry nothing yet and do not count. Brakes do not count. A chock with no axle stated holds the last axle.

If no wheel is chocked, the rule wheels-unchocked reports it.

A grade that is not stated is not treated as level. The rule then reports that it could not run, and states what the other checks assume: level ground, or a slope down toward the rear.

## Sources

- The incline: OpenStax University Physics, volume 1, section 6.2.
- Friction of tires: the source given with the surface.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked on the wrong side" {
  ground { // grade-slide
    surface asphalt
    grade   4 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 { under trailer; holds forward }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked in both directions" {
  ground {
    surface asphalt
    grade   4 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
  'ground-bearing': `# ground-bearing: ground bearing exceeded

## What it protects against

A base that sinks on one side tips the load that it holds.

## Calculation

    pressure        = load ÷ area that bears
    area that bears = (length − 2 × load off the middle) × (width − 2 × load off the middle)
    pressure        ≤ allowable bearing of the surface
    edge pressure   = load ÷ area × (1 + 6 × off ÷ side)
                    = load ÷ area × 4 ÷ (3 × (1 − 2 × off ÷ side))     if off > side ÷ 6
    pad             = load ÷ share of the base that bears ÷ allowable bearing

An open base bears on its timbers, a solid base on its outline, a pad as far as it spreads the load. Every case is checked: each support lost, each stage, each at the place in the ranges where the crib carries most. An edge pressure above the limit is a warning if the area that bears is not overloaded. Example: 1,533 psf over a whole base, load 0.26 of its side off the middle: 3,198 psf on the area that bears, 4,265 psf at the edge.

A pad spreads the load past what stands on it as far as it carries the allowable bearing q in bending and in shear:

    overhang = thickness × √(bending stress ÷ (3 × layers × q))
    overhang ≤ thickness × shear stress ÷ (1.5 × q)

Timbers side by side spread a load only along their grain (lengthwise). Plywood bends in layers of 3/4 in. Pad material not stated: how far it spreads the load is not known. If the area of what stands on the pad is not enough and the whole pad would be, this check has not passed.

Not checked: places in the ranges where a smaller load is farther off the middle; uneven ground; settling over hours.

## Sources

- International Building Code 2012, Table 1806.2; 24 CFR 3285.202. The two differ for gravel: the policy or the surface states which one applies.
- Allowable bearing under a strut or a crib for about an hour: common practice, no source.
- Effective width B − 2e: Meyerhof (1953); NAVFAC DM-7.02, chapter 4 (from memory). Edge pressure: statics of a triangle of pressure.
- Overhang of a pad: D. Duerr, Effective Bearing Length of Crane Mats, equations 1 to 8.
- Stresses, all from memory: timber 500 and 125 psi (NDS Supplement 2018, Table 4D, the least of the common softwoods); plywood 160 and 40 psi on the whole section (APA D510, Table 4A, perpendicular to the strength axis); steel 27,000 and 14,400 psi (AISC 1989, A36).

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Soft ground, open base" {
  ground { surface soft-clay }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds  both directions
  }
  crib A { // ground-bearing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A large pad as thin as a sheet" {
  ground { surface soft-clay }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds both directions
  }
  crib A { // ground-bearing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.25 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
  pad P1 {
    size       20 ft by 20 ft
    thickness  0.1 in
    material   steel
    under      A
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Concrete" {
  ground { surface concrete }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 8,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
    base      solid
  }
}
\`\`\`
`,
  'joist-miss': `# joist-miss: contact not under its part

## What it protects against

A contact between two joists meets only sheet metal or flooring. It carries no load.

## Calculation

The part must lie over the top timber. Along the timber, the distance from the contact to the part has a limit:

    distance from the contact to the edge of the joist ≤ joist reach (2 in)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Between two joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft, driver side 3 ft 6.75 in // joist-miss
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Under the joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'lifting-intent': `# lifting-intent: lift not stated

## What it protects against

Stabilizing is not lifting. A lifted vehicle shifts its load and can slide off its supports.

## Calculation

    upward in all = sum of the preloads; of a strut, its upward part
    share         = upward in all ÷ weight

More than 5 percent of the weight is a lift. State the lift in the plan, or set the supports snug.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Driven up hard" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs preload 12,000 lb // lifting-intent
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Snug" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'loss-of-support': `# loss-of-support: not held if a support fails

## What it protects against

A support that held the vehicle before the crew came can fail while they work: a tire, an air spring, a landing gear leg, the car below. The supports that the crew set must then hold.

## Calculation

The complete stabilization system is calculated again with one support removed at a time:

- each vehicle below that is not coupled;
- the wheels at each end of each axle;
- the air springs of an axle, or of a cab;
- each landing gear leg that is down;
- each corner of a vehicle that lies on its side or its roof;
- the ground under the base of each strut;
- with the policy \`ground under cribs may give way\`: the ground under each crib and each step chock.

After each loss every vehicle must still rest, at every end of the ranges of weight and place. The load that each crib then carries is checked by crib-load.

Some losses are a warning: a lost tire lets the vehicle down onto its rim, air springs let it down onto their stops, and a corner that folds lets it down onto the body beside it. If a car, a landing gear leg or an axle's springs fail, the vehicle falls: a danger.

Couplings are not removed.

The ground under cribs is not removed unless the policy says so. A crib stands on a broad base on ground that the crew inspected. The rule ground-bearing compares its pressure with the allowable bearing of that ground, and the crew inspects it again while they work. A strut stands on one small base that is also pushed outward, so the ground under it is always removed in turn. On ground that can thaw, wash out or cave in (a trench, a bank, a filled lot), set \`ground under cribs may give way\`: then the plan may not depend on any single crib.

## Sources

- Which losses to check, and that the ground under cribs is judged by its pressure: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "The car alone holds that corner" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-of-support
    cargo "freight" 9,000 lb from 12 ft to 24 ft
    no tire at axle 2, driver side
  }
  vehicle car : Sedan { // loss-of-support
    at     22 ft, driver side 1 ft
    bears  truck at rail
  }
}
\`\`\`

### On ground that may wash out

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  ground under cribs  may give way  source stated
}

plan "One crib holds that corner" {
  policy OurPolicy
  ground { surface asphalt; grade 0 % toward rear }
  vehicle truck : StraightTruck { // loss-of-support
    cargo "freight" 9,000 lb from 12 ft to 24 ft
    no tire at axle 2, driver side
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        20 ft 6 in, driver side 39.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "On all its wheels" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  'order-ground-up': `# order-ground-up: upper vehicle stabilized before the lower one

## What it protects against

A support built on something loose moves with it. Stabilize the lower vehicle first, and place a pad before the support that stands on it.

## Calculation

No calculation. Every step that stabilizes the upper vehicle must wait, by its place in the list or by \`after\`, for a step that stabilizes the lower one.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "The trailer first" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build   A // order-ground-up
    2 capture car  with cribs C1
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "The car first" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 capture car  with cribs C1
    2 build   A
  }
}
\`\`\`
`,
  'order-missing': `# order-missing: steps missing or out of order

## What it protects against

A support that no step puts in is not there when it is needed. A support put in too early has nothing to rest on.

## Calculation

No calculation. The check requires that:

- a step puts in every support;
- chocks come before cribs and struts;
- a strap is tightened when both of its ends are in place;
- a strut is locked before it is checked;
- steps do not wait for each other in a circle.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "No step builds B" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B { // order-missing
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Both are built" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build B
  }
}
\`\`\`
`,
  'part-cannot-bear': `# part-cannot-bear: support under a part that cannot bear

## What it protects against

Sheet metal, tanks, moving parts and brackets fold or turn under a load that the frame would carry.

## Calculation

No calculation. The vehicle states for each part whether it can bear, and if not, why. This holds for the part that a crib or step chock captures, and for the part that it stands on.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Under a part that folds" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   12
    wedges    1 pair, 0.5 to 2 in
    at        3 ft, center
    captures  kingpin // part-cannot-bear
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "A crib on a car's roof" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    area roof {
      height 30 in
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    4 pairs, 0.5 to 2 in
    at        25 ft 6 in, driver side 3 ft 6.75 in
    stands on car roof // part-cannot-bear
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Under rail and joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'part-load': `# part-load: part overloaded, or too narrow on its timber

## What it protects against

A part that carries more than its rating bends or tears. A part narrower than the timber cuts into it.

## Calculation

    load of each support on the part          ≤ rating of the part
    loads of all supports on it, as built     ≤ rating of the part
    load of a contact                         ≤ stress perpendicular to grain × overlap
    overlap = width of the part × dressed width of the timber          0.25 in × 3.5 in × 500 psi = 437 lb

The load is the worst case over every step, the loss of each support and the full range of weights and positions. It counts from what captures the part, stands on it or has its head on it, and from vehicles that rest there.

A part that lies along its timber counts only over the crossing. A single point counts with its width both ways. A part as wide as the timber is checked by crib-load alone.

A car under a truck: its strength is not known. The finding says so and gives the load. The plan is checked with the car lost (loss-of-support). A part that a crib stands on without a rating is a note.

Not checked: strength of a captured part without a rating; bending of a part between its supports.

## Sources

- Bearing perpendicular to grain on the area in contact: NDS 2018, 3.10.2 and 3.10.4. The bearing length factor is that of the whole crossing, which is lower than that of a shorter bearing.
- Ratings: as stated in the plan.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "A rail rated 500 lb" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
    rails rail {
      rating 500 lb
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists // part-load
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "Thin joists" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
    joists joists {
      width 0.25 in
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists // part-load
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "A rail that carries it" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
    rails rail {
      rating 25,000 lb
    }
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'policy-loosened': `# policy-loosened: limit made less safe

## What it protects against

People who rely on the plan expect the usual limit and do not see that it was loosened.

## Calculation

No calculation. Each limit of a policy is compared with the limit that it replaces. A tighter limit is not reported. A looser limit needs a reason, and it shows on every sheet.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  height ratio all contacts 4 source stated because "trial with longer wedges" // policy-loosened
}

plan "Looser than shipped" {
  policy OurPolicy
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

policy OurPolicy : Shipped {
  height ratio all contacts 2 source stated
}

plan "Tighter than shipped" {
  policy OurPolicy
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  'post-slender': `# post-slender: post too slender

## What it protects against

A long, thin post buckles long before the wood crushes. It gives little warning.

## Calculation

    slenderness = length ÷ least depth          180 in ÷ 3.5 in = 51.43
    limit       = 50

The length is measured from base to head. Plies nailed together count with their full depth. The loss at the nails is taken off in the capacity of the post.

## Sources

- 50 in service, 75 while erecting: from memory, NDS 2018, 3.7.1.4. A post that holds a load over people is in service.

A department's policy may set another limit, with its own source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/ties.crib"

timber Fir2x4 {
  size     2x4
  dressed  1.5 in by 3.5 in
  species  DouglasFir
}
strut type ThinPost {
  post Fir2x4
}

plan "A two by four on edge" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : ThinPost {
    head  trailer rail near 14 ft, driver side
    base  6 ft out // post-slender, strut-angle
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Two four by fours, tied" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Post4x4 {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Post4x4 {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'push-margin': `# push-margin: holds too small a side push

## What it protects against

A tool, a shifting load or a second vehicle pushes the vehicle sideways, and it slides or tips over.

## Calculation

The complete stabilization system is pushed at the height that the policy sets, from 24 directions. In each direction the check finds the largest push for which the forces can still balance:

- a contact pushes and never pulls; its friction is at most friction × load;
- a crib contact carries at most its capacity, and a crib tips over when the force on its top points outside its base;
- a strut only pushes, up to its rated load; its base slides unless friction or a strap holds it;
- a strap or chain only pulls, up to its rating;
- a wheel resists rolling only if its axle is chocked. Brakes are not counted;
- a vehicle that lies on its side or its roof is held by the body friction of the ground, at the corners of its outline. Supports set beside it hold no better, because no load is certain to move to them. If that friction is not known, the check reports that it could not run;
- grade and tool loads act all the time.

By hand, for a block with no other support: it slides at friction × weight, or tips at weight × half its width ÷ height of the push, whichever comes first.

    friction 0.6, half width 3 ft, pushed at 7 ft 6 in: 60 % to slide, 3 ft ÷ 7 ft 6 in = 40 % to tip

Two limits of the method:

1. The method adds no preload. A strut that would push the vehicle in the direction of the push counts as nothing. Otherwise two struts could squeeze each other in the calculation, for friction that nobody applied.
2. The result is the push that the system _can_ hold: one way to share the forces was found. Dry friction does not guarantee that they are shared in that way. The margin in the policy covers this.

A strut without a strap whose base slides adds nothing until its base is strapped.

## Sources

- 10 % of the vertical load, sideways: FEMA Rescue Specialist course, Module 1A.
- A distribution that balances and exceeds no limit is a lower bound: from memory, limit analysis.
- Friction: the lines of the surface and the policy. Under a vehicle that lies on its side or roof: the \`body friction\` of the surface, at its low end.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

policy Careful : Shipped {
  push margin 60 %
}

plan "On its wheels alone" {
  ground { surface asphalt; grade 0 % toward rear }
  policy Careful
  vehicle trailer : VanTrailer53 { // push-margin
    cargo "freight" 40,000 lb from 4 ft to 48 ft height 8 ft
  }
}
\`\`\`

\`\`\`crib
use "library/vehicles.crib"

plan "On its side, pulled by the grade" {
  ground { surface concrete; grade 4 % toward front }
  vehicle truck : StraightTruck { // push-margin
    position on its driver side
    cargo   "freight" 8,000 lb from 10 ft to 28 ft height 60 in
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked, and low" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "steel plate" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
  chock K1 { under trailer; holds both directions }
}
\`\`\`
`,
  'size-up-missing': `# size-up-missing: size-up incomplete

## What it protects against

Fuel, batteries, cargo and the energy stored in brakes injure crews who did not check for them.

## Calculation

No calculation. The plan states what was found for fuel, battery, cargo and brakes.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Not a word of the brakes" {
  vehicle trailer : VanTrailer53
  size up { // size-up-missing
    fuel    "none on the trailer"
    battery "none"
    cargo   "paper on pallets"
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "All four said" {
  vehicle trailer : VanTrailer53
  size up {
    fuel    "none on the trailer"
    battery "none"
    cargo   "paper on pallets"
    brakes  "spring brakes set"
  }
}
\`\`\`
`,
  'stage-unsafe': `# stage-unsafe: unsafe while partly built

## What it protects against

A stabilization system that holds when complete can fail while it is built or taken down.

## Calculation

Each step that puts something in or takes something out makes a stage. Every vehicle must rest at each stage. If one stage survives the loss of a support, the next stage must survive it too.

    step 1 builds cribs A and B: the front of the trailer is held
    step 2 takes crib B away: the front corner on that side is no longer held

A support that carried the load before a new one was placed keeps carrying it. A new support starts at zero load, or at the preload of its wedges, and shares only later changes.

## Sources

- Each stage is checked as a system of its own: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "A crib taken out and put back" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer {
    cargo "freight" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A, B
    2 remove B // stage-unsafe
    3 build B
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "Only built up" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer {
    cargo "freight" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    4 pairs
    at        19 ft 6 in, passenger side 3 ft 6.75 in
    captures  rail, joists
  }
  steps {
    1 build A
    2 build B
  }
}
\`\`\`
`,
  'strut-angle': `# strut-angle: strut too flat, too steep, or not at its written angle

## What it protects against

A flat strut pushes its base out more than it pushes up. A steep strut holds nothing sideways.

## Calculation

    angle = arctan(rise ÷ run)

The rise is from base to head, the run is along the ground. The angle is always calculated from head and base, never taken from the written angle alone. Limits of the shipped policy: at least 45 deg, at most 75 deg.

## Sources

- About 45 deg and not flatter: common practice, no source.
- 45 deg usual, 60 deg maximum for rakers: from memory, US Army Corps of Engineers Shoring Operations Guide, section 2.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Feet too far out" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  6 ft out // strut-angle
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

\`\`\`crib fixed
    base  3 ft 4 in out
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "At 45 degrees" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'strut-head': `# strut-head: strut head on a part that moves or cannot bear

## What it protects against

A strut head on a door, a hood, a sprung cab or sheet metal slips or tears out under load.

## Calculation

The head must lie under the part:

    distance from the head to the edge of the part ≤ joist reach (2 in)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Head on the raised legs" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer legs near 9 ft, driver side // strut-head
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Heads under the rails" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'strut-length': `# strut-length: strut too short or too long

## What it protects against

A strut that does not reach is extended past its last hole or set on something loose.

## Calculation

    length = √(run² + rise²)
    shortest ≤ length ≤ longest

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Eight feet do not reach" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  9 ft out // strut-length
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Within its range" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'strut-load': `# strut-load: strut overloaded

## What it protects against

A strut loaded beyond its rating buckles without warning. The longer the strut, the lower its rating.

## Calculation

    load along the strut = upward part ÷ sin(angle)
    load ≤ rating at that length

The rating is the row of the manufacturer's table for that length, or the next longer row. Between two rows the lower rating counts. Beyond the table there is no rating. A timber post is calculated by the NDS column formula.

## Sources

- Ratings: the type of the strut, with its source.
- Timber posts: NDS 2018, 3.7.1.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "A strut that nobody rated" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  strut S1 : UnratedStrut { // strut-load
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : UnratedStrut { // strut-load
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Rated struts" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'strut-lock': `# strut-lock: strut without a mechanical lock

## What it protects against

A strut held only by oil or air comes down when a seal or a hose fails.

## Calculation

No calculation. Pin the strut or set its lock collar before anyone relies on it.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "On its pump" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pump only // strut-lock
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`

\`\`\`crib fixed
    lock  pinned
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Pinned" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'strut-one-sided': `# strut-one-sided: struts on one side only

## What it protects against

Struts on one side push a vehicle over to the other side.

## Calculation

No calculation. A vehicle with struts on one side needs struts on the other side too.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Driver side only" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft { // strut-one-sided
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Both sides" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'strut-slip': `# strut-slip: strut base slides

## What it protects against

A base that slides takes the strut away as soon as the load comes on. Without a strap such a strut holds nothing.

## Calculation

    friction needed = 1 ÷ tan(angle)          at 45 deg: 1

Friction alone holds a base only if cos(angle) ≤ friction × sin(angle). Otherwise a strap must pull back against the thrust.

The friction counted on is the least of the base plate (policy), of the pad and of the surface. Under a post, and under a pad of timber or plywood, the surface's friction with timber counts; under anything else the least that the surface gives.

## Sources

- The incline: OpenStax University Physics, volume 1, section 6.2.
- 0.3 under a base: OpenStax University Physics, volume 1, Table 6.1, metal on wood, moving.
- Timber and metal on each surface: as its own lines say.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Untied" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out // strut-slip
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out // strut-slip
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Tied base to base" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'tie-anchor': `# tie-anchor: strap or chain on an anchor that may not hold

## What it protects against

A strap holds no more than its anchor.

## Calculation

    pull ≤ capacity of the anchor

State the capacity of an anchor in the ground. An unknown capacity never counts as enough.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Nobody knows what the tree holds" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
  anchor Tree {
    at    14 ft, driver side 30 ft
    holds unknown
  }
  strap T2 : RatchetStrap2in {
    from S1 base
    to   Tree // tie-anchor
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Base to base" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'tie-load': `# tie-load: strap or chain overloaded

## What it protects against

A strap that breaks lets both strut bases go at once.

## Calculation

    pull = load along the strut × (cos(angle) − friction × sin(angle)) ÷ share of the pull along the thrust
    pull ≤ working load limit

The share is the part of the pull in the direction in which the base would slide. If the strap rises, friction × its rise ÷ its length is taken off, because the strap lifts the base.

The pull is the larger of the pretension set by hand and the pull from the base.

## Sources

- Working load limits of unmarked straps and chains: 49 CFR 393.108.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

strap type NoTag {
  rating unknown
}

plan "A strap that nobody rated" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 40,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : NoTag { from S1 base to S2 base } // tie-load
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "A chain" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  chain T1 : Chain70_3_8in { from S1 base to S2 base }
}
\`\`\`
`,
  'tie-missing': `# tie-missing: strut base not strapped

## What it protects against

A leaning strut pushes its own base out. Without a strap the base slides away and the load comes down.

## Calculation

    thrust at the base = force along the strut × cos(angle)

Do not rely on friction alone. Run a strap between the bases of two opposite struts, or from the base to an anchor.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "No strap" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft { // tie-missing
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft { // tie-missing
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Strapped base to base" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 base to S2 base }
}
\`\`\`
`,
  'tipping': `# tipping: tips over under a small push

## What it protects against

A vehicle with a high center of gravity near the edge of its supports tips over under a push or when its load shifts.

## Calculation

Moments about the line over which it would tip, with a push at the height of the center of gravity:

    push × height = weight × distance of the center inside that line
    push ÷ weight = distance ÷ height              36 in ÷ 90 in = 40 %

The distance is to the nearest line between the places that hold the vehicle up. On a grade it is measured from where the weight acts, height × grade downhill of the center of gravity. The height is the high end of its range. The worst end of all ranges counts.

The policy sets the push that the vehicle must hold. The check is for vehicles without struts. With struts, the push from all sides is the check: see push-margin.

## Sources

- Slip or tip: Baker & Haynes, Engineering Statics, chapter 9.
- Half the track over the height of the center of gravity: NHTSA rollover rulemaking, chapter V.
- The push that it must hold: the line of the policy.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

vehicle type TallTrailer : VanTrailer53 {
  center 60 to 70 in high
}

policy Careful : Shipped {
  push margin 40 %
}

plan "Stacked high" {
  ground { surface asphalt; grade 0 % toward rear }
  policy Careful
  vehicle trailer : TallTrailer { // tipping
    cargo "rolls of paper" 40,000 lb from 4 ft to 48 ft height 9 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Stacked low" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "steel plate" 20,000 lb from 4 ft to 48 ft height 5 ft
  }
}
\`\`\`
`,
  'unsupported-end': `# unsupported-end: end not supported

## What it protects against

A vehicle whose supports do not surround its center of gravity falls toward the open side. Rust or friction can hold it for a while.

## Calculation

Draw a line around all places that hold the vehicle up. The vehicle rests only if its center of gravity is inside that line, at every end of the ranges of weight and place.

    trailer with no tractor and its landing gear up: only the tandem holds it
    tandem at 46 ft 6 in and 50 ft 6 in; center of gravity at about 27 ft
    27 ft is in front of 46 ft 6 in: the front falls

If several vehicles rest on each other and most of their weights are ranges, every combination of the ends is tried, up to 256. If there are more, not every combination is tried, and the check reports that it has not passed.

A vehicle on two supports in line only balances. That counts as not held.

The check calculates how every vehicle rests, also when one rests on another. It reports a fall only with proof: a motion in which the weight sinks and no support is pressed. If neither rest nor fall can be proven, it says so, and the plan has not passed.

## Sources

- A body rests if its center of gravity is over its supports: from memory, any text on statics.
- What counts as a support: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

vehicle type DroppedTrailer : VanTrailer53 {
  points kingpin {
    carries 5,000 to 6,400 lb empty stiffness 20,000 lb per in raised
  }
}

plan "No tractor, legs up" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : DroppedTrailer { // unsupported-end
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "On its kingpin and its tandem" {
  ground { surface asphalt; grade 0 % toward rear }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`
`,
  'upper-on-unstable-lower': `# upper-on-unstable-lower: lower vehicle not stabilized

## What it protects against

A car on its own springs and tires rocks and sinks under the truck that rests on it.

## Calculation

No calculation. A vehicle with another vehicle resting on it needs cribs or step chocks of its own.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "The car is not held" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan { // upper-on-unstable-lower
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "The car is held" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  vehicle car : Sedan {
    at      25 ft, passenger side 1 ft
    heading across to passenger side
    bears   trailer at rail from 23 ft 6 in to 26 ft 6 in
  }
  crib C1 {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   2
    wedges    1 pair, 0.5 to 2 in
    at        22 ft, driver side 6 ft 6 in
    captures  car rocker
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    overhang  4 in
    courses   11
    wedges    1 pair, 0.5 to 2 in
    at        19 ft 6 in, driver side 3 ft 6.75 in
    captures  rail, joists
  }
}
\`\`\`
`,
  'weight-sum': `# weight-sum: weights do not add up

## What it protects against

A wrong weight makes every load in the plan wrong.

## Calculation

    weight as written = sum of the empty loads on the axles and the kingpin

A difference of 2 percent either way is accepted: scales and manufacturers' sheets differ by that much. If the load on the kingpin is not stated, the axles alone must not carry more than the whole weight.

## Sources

- The addition: statics. The 2 percent: common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Two weights for one truck" {
  vehicle truck : StraightTruck {
    weight  31,500 lb // weight-sum
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "One weight" {
  vehicle truck : StraightTruck {
    weight  12,500 to 14,500 lb
  }
}
\`\`\`
`,
  'wheels-unchocked': `# wheels-unchocked: wheels not chocked

## What it protects against

A vehicle that rolls an inch moves every crib and strut out of line.

## Calculation

No calculation. Every vehicle on its wheels is chocked in both directions. On a grade steeper than the limit of the policy, missing chocks are a danger instead of a warning.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Nothing under the wheels" {
  vehicle trailer : VanTrailer53 { // wheels-unchocked
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked in both directions" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    holds  both directions
  }
}
\`\`\`
`,
};

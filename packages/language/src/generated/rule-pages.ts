// Written by build/embed.mjs. Do not edit.
/** Every rule's page: rule id to Markdown. */
export const rulePages: Readonly<Record<string, string>> = {
  'acceptance-expired': `# acceptance-expired: acceptance that has run out

## What it protects against

What was accepted for a time is not accepted for ever.

## The sum

today ≤ the date in the line

Without a date of today nobody knows whether an acceptance stands: it does not count then, and the check says that it could not run.

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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "wall on the other side" by "Captain Vale" until 2020-01-31 // acceptance-expired
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to trailer rail 14 ft, passenger side }
  accept strut-one-sided on trailer because "wall on the other side" by "Captain Vale" until 2099-01-31
}
\`\`\`
`,
  'air-spring-free': `# air-spring-free: cab left on its air springs

## What it protects against

A sleeper cab sits on rubber mounts in front and on air springs behind. It sways while tools work, and drops when a line is cut or the air leaks out.

## The sum

The cab is a body of its own. At least one crib or strut of the finished set-up must reach it and hold it. A crib that stands short of the cab does not count.

Crib between cab and frame, on both sides, or set side struts under the cab. Those struts carry the cab only, not the tractor.

## Sources

- That a cab on air is unsteady, and how it is held: common practice, no source.

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
  'axle-overweight': `# axle-overweight: axles heavier than the law allows

## What it protects against

A weight or a place that was typed wrong makes every other figure wrong. A truck that would break the law on the road is more often a slip of the pen than a heavy truck. If the weights are right, the truck is overweight, and you want to know that too.

It is not a check of safety. It is one of what was written.

## The sum

Cargo bears on two groups of axles by the lever rule, or on a kingpin and one group. Then every run of neighboring axles is held against its limit, the ones inside as well:

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

plan "A nought too many" {
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
  'cache-short': `# cache-short: more needed than the units carry

## What it protects against

A crib that is four timbers short is built lower, or out of what lies about.

## The sum

timbers = sum over the courses 11 courses of 2 = 22
short = needed at the busiest − carried

A support that a step takes out again gives its pieces back.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

cache Pine2 "Pine 2" {
  people 4
  12 Fir4x4 24 in long
  8 wedge pairs
}

plan "Ten timbers short" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  units respond Pine2
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
  people 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Enough" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  units respond Pine2
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
  'cache-unknown': `# cache-unknown: cache that nobody knows

## What it protects against

A plan that nobody can supply is found out on scene.

## The sum

There is no sum. A plan names the units that respond, and each of their caches lists something.

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Who comes?" { // cache-unknown
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
  people 4
  40 Fir4x4 24 in long
  8 wedge pairs
}

plan "Pine 2 comes" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  units respond Pine2
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

Timber that is counted twice is there once.

## The sum

There is no sum. A thing stands once in a cache, and is put in by one step.

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
  'crew-short': `# crew-short: more people at work than come

## What it protects against

A plan for more hands than there are is built in haste, or half.

## The sum

people = sum of the crews of the steps under way at one time people ≤ those who come

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

## The sum

contact off the part beneath it ≤ contact alignment (1 in)
slope of the captured part ≤ steepest capture (10 deg)

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
  'crib-base': `# crib-base: base that sinks or hangs over

## What it protects against

On soft ground two base timbers sink unevenly and tip the crib.

## The sum

There is no sum of its own: on ground that is not paved a crib stands on a solid base or on a pad that is at least as long as its timbers.

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

What cannot be built as planned is built otherwise, and nobody has checked that.

## The sum

Seen from above, and between their heights, two cribs, a crib and a body, a crib and a wheel, or a strut and a crib must not run into each other. A crib takes the full length of its timbers both ways.

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

A crib loaded off its middle leans to that side, and only the loaded contacts carry.

## The sum

middle of the loaded contacts off the middle of the crib ≤ width ÷ 6

## Sources

- Within a sixth of the width off the middle a base stays closed: from memory, the middle-third rule.

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
  'crib-height': `# crib-height: crib too high for its width

## What it protects against

A crib that is tall and narrow sways under load and goes over without warning. It sways sooner when the load rests on one side of it only.

## The sum

The width counts from outside to outside of the contacts, not over the full timber:

    width = timber length − 2 × overhang            24 in − 2 × 4 in = 16 in
    limit = ratio × width

The ratio is the policy's: 3 with all contacts loaded, 1.5 with some, 1 with one. The height is courses × dressed depth. Wedges and shims are not counted.

## Sources

- 3 and 1.5: common practice, no source.
- 1 on one contact: from memory, US Army Corps of Engineers Shoring Operations Guide, section 2.

A department's policy may set other ratios, with its own source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Too high on two contacts" {
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
  'crib-layout': `# crib-layout: courses that cannot be laid so

## What it protects against

A crib with a single timber in a course rolls over. One with more timbers than fit cannot be built as drawn.

## The sum

timbers × dressed width ≤ width outside to outside of the contacts 4 × 3.5 in ≤ 16 in

At least 2 timbers in every course.

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

Timber loaded beyond what it bears across the grain crushes. The load leans over, and goes.

## The sum

contact = stress across the grain × crossing, rounded down 500 psi × 3.5 in × 3.5 in → 6,000 lb
crib = loaded contacts × contact 4 × 6,000 lb = 24,000 lb
use = load ÷ capacity

The load is the worst one over every stage of the building, every support that was there before the crew giving way, and the whole range of weight and place. The finding names that case. The worst may lie between the ends of a range: where other contacts come to push on the way, places between are tried too, and what lies between two of them may be a little higher. On a grade, and in a vehicle that pitches, the weight comes down height × grade off its center of gravity, toward what is low; a height that nobody said may be anything from the ground to the roof. What \`load\` lines set on or lift off counts once all stands. The stress is the flat rule, the species' own value, or the lesser of both, as the policy says.

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

The stiffer crib takes the load that the softer one was to share.

## The sum

stiffness = modulus across the grain × crossing ÷ height

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

Short ends split off and let the timber walk out. Long ones narrow the base that the height counts on.

## The sum

least overhang ≤ overhang ≤ most overhang

Both are the policy's: at least 4 in, at most 6 in.

## Sources

- 4 in on a 4×4: common practice, no source. Rescue Systems 1 (California State Fire Training), chapter 30, has about the timber's own dimension.
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

plan "Ends as they should be" {
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

## The sum

shims ≤ most shims (2 in)
shims + what the wedges close ≤ most packing (4 in)

What the wedges close is the gap left above the shims. Where they do not close it, the most that they are to close counts. A fix that needs more shims than the limit offers courses.

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

A crib that stops short of the load carries nothing until the load drops onto it. One that is too tall cannot be built.

## The sum

gap = underside of the part − what the crib stands on − courses × dressed depth − shims

The wedges must close it: not more than they can, and not less than they need to go in. Where the part's height is a range, both ends must hold.

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
  'crib-wedge': `# crib-wedge: contact without wedges, or wedges stretched too far

## What it protects against

A contact that is not tight carries nothing until the load has moved.

## The sum

pairs of wedges ≥ contacts loaded
what they close ≤ wedge travel (2 in)

## Driven wedges

A crib whose wedges state a preload shows two more figures.

steepest wedge that stays by itself = arctan(friction between the wedges) + arctan(the least friction on their outer faces)
push on each end of a pair, at the least = preload ÷ pairs × (friction between the wedges + the least friction on their outer faces)

With grip of 0.45 between timbers and 0.3 against metal the first is 40 degrees. A wedge cut 4 in high over 18 in rises 12 degrees, and stays. Ice, grease, or traffic that shakes it takes that away: nail or block driven wedges. How steep yours are cut is not in a plan, so nothing compares it.

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
  'egress-blocked': `# egress-blocked: way out blocked, narrow or missing

## What it protects against

Whoever kneels there must be able to leave at once, without looking where to step.

## The sum

The way out is a band of its width. Nothing higher than 6 in and lower than 6 ft may stand in it, and no strap may cross it.

    width ≥ egress width (3 ft)

## Sources

- Common practice, no source.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"

plan "Past the crib" {
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
  way out Back { // egress-blocked
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
  way out Back {
    from 25 ft, driver side 6 ft
    to   25 ft, driver side 20 ft
  }
}
\`\`\`
`,
  'expectation-unmet': `# expectation-unmet: plan that does not come to what it expects

## What it protects against

A plan that was right when it was written, and no longer is.

## The sum

What the plan expects is held against what came out:

    expect safe                                no danger, and no check that could not run
    expect crib-height on A                    that rule speaks of A
    expect height on A 38.5 in                 that figure, within the share given after \`within\`

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
  'geometry-impossible': `# geometry-impossible: sizes and places that cannot be

## What it protects against

A number typed wrong makes every figure after it wrong.

## The sum

There is no sum. Parts, axles and cargo lie within their vehicle. A vehicle that rests on another touches it where it is said to.

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

On a grade the weight pulls downhill. Chocks on too few wheels slide with it.

## The sum

    pull downhill = weight × sin(grade)             40,000 lb × sin(atan 3 %) = 1,199 lb
    what holds    = friction × load on the wheels that cannot roll downhill

The weight is taken at its heavy end. The load on the chocked wheels is the least that the ranges allow, as the set-up stands. Snug cribs carry nothing yet and are not counted. Brakes are not counted. A chock without an axle holds the last one.

Where no wheel is chocked at all, wheels-unchocked says so.

A grade that nobody says is not a level one. The rule then says that it could not run, and names what was taken instead: level ground, or a fall toward the rear.

## Sources

- The incline: OpenStax University Physics, volume 1, section 6.2.
- Friction of tires: the surface's line.

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
  chock K1 { under trailer; ways forward }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"

plan "Chocked both ways" {
  ground {
    surface asphalt
    grade   4 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 { under trailer; ways both }
}
\`\`\`
`,
  'ground-bearing': `# ground-bearing: ground pressed harder than it bears

## What it protects against

A base that sinks on one side tips what stands on it.

## The sum

pressure = load ÷ area that bears ≤ what the surface bears
area that bears = (length − 2 × load off the middle) × (width − 2 × load off the middle)
edge pressure = load ÷ area × (1 + 6 × off ÷ side), or load ÷ area × 4 ÷ (3 × (1 − 2 × off ÷ side)) beyond a sixth of the side
pad that would do = load ÷ share of the base that bears ÷ what the surface bears

An open base bears on its timbers, a solid base on its outline, a pad as far as it carries. Every case is tried: each support lost, each stage, each at the place in the ranges where the crib carries most. A pressure at the edge that is too high while the part that bears is not pressed too hard is a warning. 1,533 psf over a whole base with the load 0.26 of its side off the middle is 3,198 psf on the part that bears and 4,265 psf at the edge.

A pad counts past what stands on it as far as it carries the ground's allowable pressure q in bending and in shear:

overhang = the lesser of thickness × √(bending stress ÷ (3 × layers × q)) and thickness × shear stress ÷ (1.5 × q)

Timbers side by side spread a load along their grain alone (lengthwise). Plywood bends in layers of 3/4 in. Of a pad whose material is not stated nobody knows how far it spreads: where what stands on it alone is not enough and the whole pad would be, this check has not passed.

Not looked at: places in the ranges where the load is farther off the middle and smaller than the most; unevenness of the ground; settling over hours.

## Sources

- International Building Code 2012, Table 1806.2; 24 CFR 3285.202. The two differ for gravel: the policy or the surface says which counts.
- What bears how much under a strut or a crib for an hour is common practice, no source.
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
    ways  both
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
    ways  both
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
  'joist-miss': `# joist-miss: contact beside the part it should meet

## What it protects against

A contact between two joists meets only sheet metal or flooring. It carries nothing.

## The sum

The part must lie over the top timber, and along the timber at most this far from the contact:

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
  'lifting-intent': `# lifting-intent: lift that nobody meant

## What it protects against

Stabilizing is not lifting: what is lifted shifts its load and may slide off what held it.

## The sum

upward in all = sum of the preloads, struts by their upward part
share = upward in all ÷ weight

More than 5 per cent of the weight is a lift. The plan says so, or the supports are set snug.

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
  'loss-of-support': `# loss-of-support: not held if a support gives way

## What it protects against

What held the vehicle before the crew came may give way while they work: a tire, an air spring, a landing leg, the car beneath. What the crew put in must then hold.

## The sum

The finished set-up is worked out again with one support taken away at a time:

- each vehicle beneath that is not coupled;
- the wheels at each end of each axle;
- the air springs of an axle, or of a cab;
- each landing leg that is down;
- each corner of a vehicle that lies on its side or its roof;
- the ground under the foot of each strut;
- with the policy \`ground under cribs may give way\`: the ground under each crib and each step chock.

After each loss every vehicle must still rest, at every end of the ranges of weight and place. What each crib then carries is checked by crib-load.

A lost tire lets the vehicle down onto its rim, air springs onto their stops, and a corner that folds onto the body beside it: a warning. Where a car, a leg or an axle's springs hold the vehicle up, it falls: a danger.

A coupling does not count as something that gives way.

The ground under cribs is not among the losses until the policy says so. What is lost in turn is what held before the crew came, one at a time. A crib is the crew's own: it stands on a broad base on ground that they looked at, ground-bearing compares its pressure with what the ground bears, and they look at it again while they work. A strut stands on one small foot that is pushed outward as well, so the ground under it is lost in turn always. On ground that may thaw, wash out or cave in (a trench, a bank, a filled lot), set \`ground under cribs may give way\`: then no single crib may be the one that all hangs on.

## Sources

- Which losses to look at, and that the ground under cribs is judged by its pressure: common practice, no source.

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
  'order-ground-up': `# order-ground-up: upper vehicle held before the one beneath it

## What it protects against

What is built on something loose moves with it. The lower vehicle comes first, the pad before what stands on it.

## The sum

There is no sum. Every step that holds the upper vehicle must wait, by its line or by \`after\`, for a step that holds the lower one.

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
  'order-missing': `# order-missing: steps that leave something out or come in the wrong order

## What it protects against

What no step puts in is not there when it is needed. What comes too early stands on nothing.

## The sum

There is no sum. Every support is put in by a step; chocks come before cribs and struts; a strap is tightened when both of its ends stand; a strut is locked before it is checked; steps do not wait for each other in a circle.

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
  'part-cannot-bear': `# part-cannot-bear: support under a part that may not bear

## What it protects against

Sheet metal, tanks, moving parts and brackets fold or turn under a load that the frame would carry.

## The sum

There is no sum. The vehicle says of each part whether it may bear, and why not. This holds for the part that a crib or step chock captures, and for the part that it stands on.

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
  'policy-loosened': `# policy-loosened: limit made less safe

## What it protects against

A limit that was loosened quietly is taken for the usual one by those who rely on the plan.

## The sum

There is no sum. Each limit of a policy is held against the one that it replaces. Tightening is silent. Loosening needs a reason, and shows on every sheet.

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

A long thin post bows sideways and snaps long before the wood is crushed. It gives little warning.

## The sum

    slenderness = length ÷ least depth          180 in ÷ 3.5 in = 51.43
    limit       = 50

The length is the one from head to foot. Plies nailed together count with their whole depth; what nails lose is taken off in the post's capacity.

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
    foot  6 ft out // post-slender, strut-angle
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
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : Post4x4 {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'push-margin': `# push-margin: holds too small a push

## What it protects against

A tool, a shifting load or a second vehicle shoves the set-up sideways, and it slides or goes over.

## The sum

The finished set-up is pushed at the height that the policy sets, from 24 directions. In each, the check looks for the largest push for which the forces can still balance:

- a contact pushes and never pulls; its friction is at most friction × load;
- a crib contact carries at most its capacity, and a crib leans over when the force on its top points outside its base;
- a strut only pushes, up to its rated load; its foot slides unless friction or a tie holds it;
- a tie only pulls, up to its rating;
- a wheel resists rolling only where its axle is chocked. Brakes are not counted;
- a vehicle that lies on its side or its roof grips with the body friction of the ground, at the corners of its outline. What is set beside it grips no better: no load can be counted on to move there. Where that friction is unknown, the check says that it could not run;
- grade and working loads are there all the time.

By hand, for a block with nothing else: it slides at friction × weight, or tips at weight × half its width ÷ height of the push, whichever comes first.

    friction 0.6, half width 3 ft, pushed at 7 ft 6 in: 60 % to slide, 3 ft ÷ 7 ft 6 in = 40 % to tip

Two things to know:

1. No borrowed preload. A strut that would push the vehicle the way it is being pushed counts as nothing. Two of them could otherwise squeeze each other, in the sum, for friction that nobody put in.
2. It holds _up to_ that push: a way to share the forces was found. Dry friction gives no promise that they will be shared so. The policy's margin is there for this.

A strut without a tie whose foot slides adds nothing at all, until it is tied.

## Sources

- 10 % of the vertical load, sideways: FEMA Rescue Specialist course, Module 1A.
- A distribution that balances and breaks no limit is a lower bound: from memory, limit analysis.
- Friction: the surface's and the policy's lines. Under a vehicle that lies: the surface's \`body friction\`, at its low end.

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
    posture on its driver side
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
  chock K1 { under trailer; ways both }
}
\`\`\`
`,
  'size-up-missing': `# size-up-missing: size-up that leaves something out

## What it protects against

Fuel, batteries, cargo and the energy in brakes hurt those who did not look for them.

## The sum

There is no sum. A plan says of fuel, battery, cargo and brakes what was found.

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
  'stage-unsafe': `# stage-unsafe: unsafe while half built

## What it protects against

A set-up that stands when finished may fall while it is being built or taken down.

## The sum

Each step that puts something in or takes something out makes a stage. At each stage, every vehicle must rest; and whatever a stage would have survived, the next one must survive too.

    step 1 builds cribs A and B: the trailer's front holds
    step 2 takes crib B away: the front corner on that side no longer does

What carried the load before a support was placed goes on carrying it. A support starts at nothing, or at what its wedges put on it, and shares only what changes afterward.

## Sources

- Each stage is a set-up of its own: common practice, no source.

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
  'strut-angle': `# strut-angle: strut too flat, too steep, or not as written

## What it protects against

A flat strut pushes its foot out more than it pushes up. A steep one holds nothing sideways.

## The sum

angle = atan(rise ÷ run) rise from foot to head, run along the ground

It follows from head and foot, never only from what is typed. The policy's limits: not flatter than 45 deg, not steeper than 75 deg.

## Sources

- About 45 deg and not flatter: common practice, no source.
- 45 deg usual, 60 deg most for rakers: from memory, US Army Corps of Engineers Shoring Operations Guide, section 2.

## Unsafe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Feet too far out" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  6 ft out // strut-angle
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`

\`\`\`crib fixed
    foot  3 ft 4 in out
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'strut-head': `# strut-head: strut head on a part that moves or may not bear

## What it protects against

A head on a door, a hood, a sprung cab or sheet metal slips or tears out when the load comes on.

## The sum

There is no sum but one: the head must lie under the part.

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
  strut S1 : LongStrut {
    head  trailer legs near 9 ft, driver side // strut-head
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'strut-length': `# strut-length: strut too short or too long for its place

## What it protects against

A strut that does not reach is stretched past its last hole, or stood on something loose.

## The sum

length = √(run² + rise²) shortest ≤ length ≤ longest

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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  9 ft out // strut-length
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'strut-load': `# strut-load: strut overloaded

## What it protects against

A strut loaded beyond its rating bends and folds without warning, sooner the longer it is.

## The sum

load along the strut = upward part ÷ sin(angle) load ≤ rating at that length

The rating is the row of the maker's table for that length, or the next longer one. Between two rows the lower counts; beyond the table nothing does. A timber post is worked out by the NDS column formula.

## Sources

- Ratings: the strut's own type, with its source.
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
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : UnratedStrut { // strut-load
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'strut-lock': `# strut-lock: strut without a mechanical lock

## What it protects against

A strut that stands on oil or air alone comes down when a seal or a hose lets go.

## The sum

There is no sum. A strut is pinned, or backed off onto its lock, before anyone relies on it.

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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pump only // strut-lock
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'strut-one-sided': `# strut-one-sided: struts on one side only

## What it protects against

Struts on one side push a vehicle over to the other.

## The sum

There is no sum. What is done on one side is answered on the other.

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
  strut S1 : LongStrut { // strut-one-sided
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'strut-slip': `# strut-slip: strut foot that slides

## What it protects against

A foot that slides takes the strut away the moment the load comes on. Untied, such a strut adds nothing at all.

## The sum

friction needed = 1 ÷ tan(angle) at 45 deg: 1

Friction alone holds a foot only where cos(angle) ≤ friction × sin(angle). Otherwise a tie must pull back against the thrust.

The friction counted on is the least of the base plate (policy), of the pad and of the surface. Under a post, and under a pad of timber or plywood, the surface's friction with timber counts; under anything else the least that the surface gives.

## Sources

- The incline: OpenStax University Physics, volume 1, section 6.2.
- 0.3 under a foot: OpenStax University Physics, volume 1, Table 6.1, metal on wood, moving.
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out // strut-slip
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out // strut-slip
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Tied foot to foot" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'tie-anchor': `# tie-anchor: strap or chain made fast to something that may not hold

## What it protects against

A strap is as good as what it is made fast to.

## The sum

pull ≤ what the anchor holds

What an anchor in the ground holds must be stated. Unknown is never taken as enough.

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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
  anchor Tree {
    at    14 ft, driver side 30 ft
    holds unknown
  }
  strap T2 : RatchetStrap2in {
    from S1 foot
    to   Tree // tie-anchor
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Foot to foot" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'tie-load': `# tie-load: strap or chain overloaded

## What it protects against

A strap that parts lets both feet go at once.

## The sum

pull = load along the strut × (cos(angle) − friction × sin(angle)) ÷ share of the pull along the thrust
pull ≤ working load limit

The share is what the pull has along the way in which the foot would slide; where the strap rises, less friction ×
its rise ÷ its length, because it lifts the foot.

The strap is pulled up by hand, or pulled by the foot: the larger of the two counts.

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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : NoTag { from S1 foot to S2 foot } // tie-load
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
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  chain T1 : Chain70_3_8in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'tie-missing': `# tie-missing: strut foot not tied

## What it protects against

A leaning strut pushes its own foot out. Untied, the foot slides away and the load comes down.

## The sum

thrust at the foot = force along the strut × cos(angle)

Friction alone is not counted on. A strap joins the feet of the two struts across from each other, or a strap runs from the foot to an anchor.

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
  strut S1 : LongStrut { // tie-missing
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut { // tie-missing
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
}
\`\`\`

## Safe

\`\`\`crib
use "library/vehicles.crib"
use "library/gear.crib"
use "library/ties.crib"

plan "Strapped foot to foot" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  strut S1 : LongStrut {
    head  trailer rail near 14 ft, driver side
    foot  3 ft 4 in out
    lock  pinned
  }
  strut S2 : LongStrut {
    head  trailer rail near 14 ft, passenger side
    foot  3 ft 4 in out
    lock  pinned
  }
  strap T1 : RatchetStrap2in { from S1 foot to S2 foot }
}
\`\`\`
`,
  'tipping': `# tipping: tips over under a small push

## What it protects against

A high center of gravity near the line of the supports goes over at a shove, or as the load shifts.

## The sum

Moments about the line it would tip over, with a push at the height of the center of gravity:

    push × height = weight × distance of the center inside that line
    push ÷ weight = distance ÷ height              36 in ÷ 90 in = 40 %

Distance: to the nearest line between places that hold the vehicle up; on a grade from where the weight comes down, height × grade downhill of its center. Height: the high end of its range. The worst end of the ranges counts.

The policy sets how much it must hold. The check is for vehicles that stand free. Where struts stand, the push from all sides is the check: see push-margin.

## Sources

- Slip or tip: Baker & Haynes, Engineering Statics, chapter 9.
- Half the track over the height of the center: NHTSA rollover rulemaking, chapter V.
- How much it must hold: the policy's line.

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
  'unsupported-end': `# unsupported-end: an end that nothing holds

## What it protects against

A vehicle whose supports do not reach round its center of gravity falls toward the open side. It may stand for a while on rust, friction or luck.

## The sum

Draw a line round all places that hold the vehicle up. It rests only if the center of gravity stands inside that line, at every end of the ranges of weight and place.

    trailer with no tractor and its legs up: only the tandem holds it
    tandem at 46 ft 6 in and 50 ft 6 in; center of gravity at about 27 ft
    27 ft is in front of 46 ft 6 in: the front falls

Where several vehicles hang together and most of what they weigh is a range, every mix of the ends is tried, up to 256 of them. Of more than that not every mix is, and the check says that it has not passed.

A vehicle on two supports in line only balances. That counts as not held.

The check works out how every vehicle rests, vehicle on vehicle included. It says that one falls only when it has the proof: a motion in which the weight sinks and no support is pressed. Where neither rest nor fall can be proven, it says so, and the plan has not passed.

## Sources

- A body rests where its center of gravity stands over its supports: from memory, any text on statics.
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
  'upper-on-unstable-lower': `# upper-on-unstable-lower: vehicle resting on one that nothing holds

## What it protects against

A car on its own springs and tires rocks and sinks under the truck that rests on it.

## The sum

There is no sum. A vehicle that another one rests on is held by cribs or step chocks of its own.

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
  'weight-sum': `# weight-sum: weights that do not add up

## What it protects against

A weight that was typed wrong makes every load in the plan wrong.

## The sum

    weight as written  =  sum of what the axles and the kingpin carry empty

Two per cent either way is let pass: scales and makers' sheets differ by that much. Where the load on the kingpin is not written, the axles alone must not carry more than the whole weighs.

## Sources

- The sum: statics. The two per cent: common practice, no source.

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
  'wheels-unchocked': `# wheels-unchocked: wheels free to roll

## What it protects against

A vehicle that rolls an inch takes every crib and strut out of line.

## The sum

There is no sum on level ground: every vehicle on its wheels is chocked both ways. On a grade steeper than the policy's limit it is a danger, not only a warning.

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

plan "Chocked both ways" {
  vehicle trailer : VanTrailer53 {
    cargo "freight" 20,000 lb from 4 ft to 48 ft
  }
  chock K1 {
    under trailer
    ways  both
  }
}
\`\`\`
`,
};

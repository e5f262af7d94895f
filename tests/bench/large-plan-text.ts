const rows = [
  'driver side 3 ft 6 in',
  'driver side 1 ft 2 in',
  'passenger side 1 ft 2 in',
  'passenger side 3 ft 6 in',
];
const columns = 26;

/**
 * The text of a plan far larger than anybody builds: the rows of cribs of `largePlan`, as an author would write
 * them. It uses the bundled library alone. `aside` moves one crib in the middle, whole hundredths of an inch.
 */
export function largePlanText(aside = 0): string {
  const cribs = Array.from({ length: columns }, (_, column) =>
    rows.map((place, row) => {
      const moved = column === columns / 2 && row === 0 ? ` ${(aside / 100).toFixed(2)} in` : '';
      return crib(`N${column * rows.length + row}`, `${3 + 2 * column} ft${moved}, ${place}`);
    }),
  );
  return [head, ...cribs.flat(), foot].join('\n');
}

const crib = (name: string, place: string): string => `  crib ${name} {
    timber    Fir4x4 24 in long
    layout    2 by 2
    base      solid
    courses   11
    wedges    4 pairs
    at        ${place}
    captures  rail, joists
  }`;

const head = `// Very many cribs: every name and number here is invented.
use "library/vehicles.crib"
use "library/gear.crib"

plan "Very many cribs" {
  ground {
    surface  asphalt
    grade    1.5 % toward rear
  }

  vehicle trailer : VanTrailer53 {
    cargo   "palletized freight" 16,000 to 20,000 lb from 4 ft to 48 ft height 72 to 96 in
    brakes  set
  }

  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    bears    trailer at rail from 23 ft 6 in to 26 ft 6 in
    brakes   unknown

    area roof {
      height 40 in  source stated
    }
  }
`;

const foot = `
  strut S1 : Strut4to8ft {
    head  trailer rail near 14 ft, driver side
    base  3 ft 2 in out
    lock  pinned
  }
  strut S2 : Strut4to8ft {
    head  trailer rail near 14 ft, passenger side
    base  3 ft 2 in out
    lock  pinned
  }
  strap T1 : RatchetStrap4in { from S1 base to S2 base }

  steps {
    1  size up  trailer            crew 1  takes 2 min
    2  chock    trailer both directions  crew 1  takes 1 min
    3  chock    car both directions      crew 1  takes 1 min
    4  build    N0, N1, N2, N3     crew 4  takes 6 min
    5  set      S1, S2             crew 4  takes 6 min
    6  lock     S1, S2             crew 2  takes 1 min
    7  tension  T1                 crew 2  takes 2 min
  }
}
`;

import { scaleHousePlan } from '@cribwright/workspace/testing';

/** A plan whose crib A stands too high for the two contacts it captures. Invented, as all of Alder Ridge County. */
export const samplePlan = (
  courses = 14,
): string => `// Alder Ridge County: every name and number here is invented.
use "library/vehicles.crib"

plan "Car under the bottom rail of a loaded van trailer" {
  ground {
    surface  asphalt
    grade    1.5 % toward rear
  }

  vehicle trailer : VanTrailer53 {
    cargo 36,000 to 42,000 lb  from 4 ft to 48 ft height 72 to 96 in
  }

  vehicle car : Sedan {
    at       25 ft, passenger side 1 ft
    heading  across to passenger side
    bears    trailer at rail from 23 ft 6 in to 26 ft 6 in
  }

  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    base      solid
    courses   ${courses}
    at        21 ft, driver side 3 ft 4 in
    captures  rail
  }

  steps {
    1  chock  trailer both directions  crew 1  takes 1 min
    2  build  A                        crew 2  takes 5 min
  }
}
`;

/** A crib that does not reach, and wheels that nobody chocks: the fixes that are offered make it safe. */
export const faultyPlan = scaleHousePlan(8, false);

/** Line and character of the first place where `words` stand, `more` characters further on. */
export function positionOf(text: string, words: string, more = 0): { line: number; character: number } {
  const offset = text.indexOf(words) + more;
  if (offset < more) throw new Error(`"${words}" does not stand in the text`);
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

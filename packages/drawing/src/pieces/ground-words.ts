import type { Ground } from '@cribwright/model';

/** What everything stands on and how it falls. `grade` is the grade as it is printed. A grade nobody said is not level. */
export function groundWords({ surface, grade, toward, unsaid }: Ground, printed: string): string {
  if (unsaid === 'grade') return `${surface.name}, grade not said`;
  if (unsaid === 'direction') return `${surface.name}, falls ${printed}, nobody says which way`;
  return grade === 0 ? `${surface.name}, level` : `${surface.name}, falls ${printed} toward the ${toward}`;
}

const points = ['north', 'northeast', 'east', 'southeast', 'south', 'southwest', 'west', 'northwest'];

/** Which way the front of the main vehicle points. `facing` in rad, clockwise from north. */
export const facingWords = (facing: number): string =>
  `front faces ${points[Math.round(facing / (Math.PI / 4)) % points.length] ?? points[0]}`;

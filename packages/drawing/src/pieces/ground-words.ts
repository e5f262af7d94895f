import { type Message, message, name, term } from '@cribwright/messages';
import type { Ground } from '@cribwright/model';

const slopes = {
  front: 'piece.slopes-front',
  rear: 'piece.slopes-rear',
  'driver side': 'piece.slopes-driver',
  'passenger side': 'piece.slopes-passenger',
} as const;

/** The surface and its grade. `printed` is the grade as it is printed. A grade that is not stated is not level. */
export function groundWords({ surface: own, grade, toward, unsaid }: Ground, printed: string): Message {
  const surface = name(own.name);
  if (unsaid === 'grade') return message('piece.grade-not-stated', { surface });
  if (unsaid === 'direction') return message('piece.direction-not-stated', { surface, grade: name(printed) });
  return grade === 0
    ? message('piece.level', { surface })
    : message(slopes[toward], { surface, grade: name(printed) });
}

const points = [
  'piece.faces-north',
  'piece.faces-northeast',
  'piece.faces-east',
  'piece.faces-southeast',
  'piece.faces-south',
  'piece.faces-southwest',
  'piece.faces-west',
  'piece.faces-northwest',
] as const;

/** Which way the front of the main vehicle points. `facing` in rad, clockwise from north. */
export const facingWords = (facing: number): Message =>
  term(points[Math.round(facing / (Math.PI / 4)) % points.length] ?? points[0]);

import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import type { Interval } from '@cribwright/model';
import { type Head, measured } from '@cribwright/model';

/** A force or a settling that comes out of the balance of a whole system: no short sum gives it. */
export const byBalance = (head: Head, value: Interval | undefined): Figure =>
  measured(head, value, term('figure.from-the-balance-of-all-forces'));

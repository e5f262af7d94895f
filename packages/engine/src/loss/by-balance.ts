import { term } from '@cribwright/messages';
import { type Head, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import type { Interval } from '../model/interval.js';

/** A force or a settling that comes out of the balance of a whole system: no short sum gives it. */
export const byBalance = (head: Head, value: Interval | undefined): Figure =>
  measured(head, value, term('figure.from-the-balance-of-all-forces'));

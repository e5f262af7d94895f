import type { SourceNote } from '@cribwright/messages';
import type { Interval } from './interval.js';
import type { Ref } from './ref.js';

/**
 * One limit or choice that the department sets. `value` is SI for a quantity, plain for a ratio or count, or a
 * word for a choice (`lesser-of-rule-and-species`).
 */
export interface PolicyLimit {
  readonly key: PolicyKey;
  readonly value: number | string | Interval;
  readonly source: SourceNote;
  readonly ref: Ref;
  /** The shipped value this one replaces, where it differs. */
  readonly replaces?: { readonly value: number | string | Interval; readonly ref: Ref };
  /** True where this is less safe than what it replaces. Then `reason` must stand. */
  readonly loosened: boolean;
  readonly reason?: string;
}

/**
 * The limits that a policy carries. Each is one property of a `policy` block, spelled the same way.
 * SI: lengths m, forces N, stresses Pa, angles rad, durations s; ratios and counts plain.
 */
export type PolicyKey =
  | 'crossing stress' //            perpendicular-to-grain stress of the flat rule, Pa
  | 'crossing basis' //             'flat rule' | 'species' | 'lesser'
  | 'crossing rounding' //          round a crossing's capacity down to a multiple of this, N
  | 'height ratio all contacts' //  crib height / width outside to outside of contacts
  | 'height ratio some contacts'
  | 'height ratio one contact'
  | 'least overhang' //             of a timber past the contact, m
  | 'most overhang'
  | 'wedge travel' //               gap that one pair of wedges closes, m
  | 'most shims' //                 thickness of shims on a crib, m
  | 'most packing' //               shims and what the wedges fill, m
  | 'joist reach' //                how far off a joist a contact may stand and still be counted, m
  | 'contact alignment' //          how far a contact may stand off the one below it, m
  | 'steepest capture' //           slope of the captured part, rad
  | 'least strut angle' //          to the ground, rad
  | 'most strut angle'
  | 'push margin' //                push held / weight, at least
  | 'push height' //                'cargo center' | 'top of body' or a height, m
  | 'use limit' //                  load / capacity, at most
  | 'friction timber on timber'
  | 'friction timber on metal'
  | 'friction strut base'
  | 'grade needing chocks' //       ratio
  | 'dressed size of 8x8' //        'dry' | 'green'
  | 'axle limit single' //          N
  | 'axle limit tandem'
  | 'gross limit'
  | 'egress width' //               m
  | 'post slenderness' //           NDS 3.7.1.4
  | 'sudden loss factor' //         what a sudden loss adds to a support, over what a slow one adds
  | 'stiffness spread' //           factor by which stiffnesses are varied to see what it changes
  | 'ground under cribs'; //        'by pressure' | 'may give way'

/** The limits that a department sets, all of them: what one does not say it takes over from those it extends. */
export interface Policy {
  readonly id: string;
  readonly name: string;
  /** The policies this one extends, nearest first. */
  readonly extends: readonly string[];
  readonly authority?: string;
  readonly limits: Readonly<Record<PolicyKey, PolicyLimit>>;
  readonly ref: Ref;
}

import type { PolicyKey } from '@cribwright/model';
import type { Dimension } from '@cribwright/units';
import { type BlockSchema, property } from '../bound/block-schema.js';
import { anyOrder, choice, either, quantity, sequence, text, word } from '../phrase/pattern.js';
import { sourcePhrase } from './phrases.js';

/** What kind of value a limit takes. Which way is the safe one is the engine's to say: `limitKinds`. */
export interface LimitKind {
  readonly dimensions: readonly Dimension[];
  readonly range?: true;
  readonly percent?: true;
  readonly words?: readonly string[];
  /** The word that is stricter than all others; without it, any change of words may be less safe. */
  readonly safest?: string;
  /** SI or plain, 0 where nothing is said. */
  readonly atLeast?: number;
  readonly doc: string;
  readonly example: string;
}

const stress = ['pressure'] as const;
const weight = ['force', 'mass'] as const;
const length = ['length'] as const;
const ratio = ['ratio'] as const;
const angle = ['angle'] as const;

export const limits: Readonly<Record<PolicyKey, LimitKind>> = {
  'crossing stress': {
    dimensions: stress,
    doc: 'Stress perpendicular to grain that the flat rule allows at a crossing.',
    example: '500 psi',
  },
  'crossing basis': {
    dimensions: [],
    words: ['flat rule', 'species', 'lesser'],
    safest: 'lesser',
    doc: 'What a crossing may carry: the flat rule, the value of the species, or the lesser of the two.',
    example: 'lesser',
  },
  'crossing rounding': {
    dimensions: weight,
    // A pound: nothing can be rounded to a multiple of none.
    atLeast: 4.448,
    doc: 'A crossing’s capacity is rounded down to a multiple of this.',
    example: '500 lb',
  },
  'height ratio all contacts': {
    dimensions: ratio,
    doc: 'Height over width, outside to outside of the contacts, when all contacts are loaded.',
    example: '3',
  },
  'height ratio some contacts': {
    dimensions: ratio,
    doc: 'The same when only some contacts are loaded.',
    example: '1.5',
  },
  'height ratio one contact': {
    dimensions: ratio,
    doc: 'The same when a single contact is loaded.',
    example: '1',
  },
  'least overhang': {
    dimensions: length,
    doc: 'How far a timber runs past its contact, at least.',
    example: '4 in',
  },
  'most overhang': {
    dimensions: length,
    doc: 'How far a timber may run past its contact.',
    example: '6 in',
  },
  'wedge travel': {
    dimensions: length,
    range: true,
    doc: 'The gap that one pair of wedges closes.',
    example: '0.5 in to 2 in',
  },
  'most shims': {
    dimensions: length,
    doc: 'How thick the shims on a crib may be, all together.',
    example: '2 in',
  },
  'most packing': {
    dimensions: length,
    doc: 'How much shims and wedges may fill together.',
    example: '4 in',
  },
  'joist reach': {
    dimensions: length,
    doc: 'How far off a joist a contact may stand and still count.',
    example: '1.5 in',
  },
  'contact alignment': {
    dimensions: length,
    doc: 'How far a contact may stand off the one below it.',
    example: '1 in',
  },
  'steepest capture': {
    dimensions: angle,
    doc: 'The steepest slope of a captured part.',
    example: '5 deg',
  },
  'least strut angle': {
    dimensions: angle,
    doc: 'The flattest that a strut may stand, to the ground.',
    example: '45 deg',
  },
  'most strut angle': {
    dimensions: angle,
    doc: 'The steepest that a strut may stand.',
    example: '75 deg',
  },
  'push margin': {
    percent: true,
    dimensions: ratio,
    doc: 'The sideways push that must be held, as a share of the weight.',
    example: '10 %',
  },
  'push height': {
    dimensions: length,
    words: ['cargo center', 'top of body'],
    doc: 'How high the push is taken to act.',
    example: 'cargo center',
  },
  'use limit': {
    percent: true,
    dimensions: ratio,
    doc: 'The share of its capacity that anything may carry.',
    example: '100 %',
  },
  'friction timber on timber': {
    dimensions: ratio,
    doc: 'Grip of timber on timber.',
    example: '0.4',
  },
  'friction timber on metal': {
    dimensions: ratio,
    doc: 'Grip of timber on metal.',
    example: '0.3',
  },
  'friction strut base': {
    dimensions: ratio,
    doc: 'Grip of a strut’s foot on the ground.',
    example: '0.4',
  },
  'grade needing chocks': {
    percent: true,
    dimensions: ['ratio', 'angle'],
    doc: 'The grade from which chocks are asked for. 0 % asks always.',
    example: '0 %',
  },
  'dressed size of 8x8': {
    dimensions: [],
    words: ['dry', 'green'],
    safest: 'dry',
    doc: 'Which of the two published dressed sizes of an 8x8 counts.',
    example: 'dry',
  },
  'axle limit single': {
    dimensions: weight,
    doc: 'Legal weight on a single axle: above it, look again at what was typed.',
    example: '20,000 lb',
  },
  'axle limit tandem': {
    dimensions: weight,
    doc: 'Legal weight on a tandem.',
    example: '34,000 lb',
  },
  'gross limit': {
    dimensions: weight,
    doc: 'Legal weight of the whole.',
    example: '80,000 lb',
  },
  'egress width': {
    dimensions: length,
    doc: 'How wide the egress is kept.',
    example: '3 ft',
  },
  'post slenderness': {
    dimensions: ratio,
    doc: 'Length over least side of a timber post, at most.',
    example: '50',
  },
  'stiffness spread': {
    dimensions: ratio,
    atLeast: 1,
    doc: 'By how much stiffnesses are varied to see what that changes.',
    example: '2',
  },
  'ground under cribs': {
    dimensions: [],
    words: ['by pressure', 'may give way'],
    safest: 'may give way',
    doc: 'Whether the ground under a crib is judged by its pressure alone, or is also lost in turn like a support.',
    example: 'may give way',
  },
};

export const policyKeys = Object.keys(limits) as readonly PolicyKey[];

const limitPhrase = ({ dimensions, range, words, percent, atLeast }: LimitKind) =>
  sequence(
    either(
      choice('choice', ...(words ?? [])),
      quantity('value', dimensions.length > 0 ? dimensions : ['ratio'], {
        range: range ?? false,
        percent: percent ?? false,
        atLeast: atLeast ?? 0,
      }),
    ),
    anyOrder(sequence(word('source'), sourcePhrase), sequence(word('because'), text('reason', 'reason'))),
  );

const limitLine = (key: PolicyKey) =>
  property(key, limitPhrase(limits[key]), { doc: limits[key].doc, example: `${key} ${limits[key].example}` });

export const limitLines = Object.fromEntries(policyKeys.map((k) => [k, limitLine(k)])) as Readonly<
  Record<PolicyKey, ReturnType<typeof limitLine>>
>;

export const authority = property('authority', text('authority', 'who sets it'), {
  doc: 'Who sets these limits.',
  example: 'authority "Alder Ridge County Fire, Special Operations"',
});

export const policy: BlockSchema = {
  keyword: 'policy',
  within: ['file'],
  doc: 'The limits of a department, with their sources. A policy extends another and changes what differs. Tightening is silent; loosening needs `because "reason"`.',
  example: 'policy CountyPolicy : Shipped {\n  height ratio some contacts 1.5 source common practice\n}',
  head: { name: 'required', title: 'optional', type: { kinds: ['policy'], required: false, extends: true } },
  declares: 'policy',
  element: 'policy',
  bodyOptional: false,
  properties: [authority, ...policyKeys.map((k) => limitLines[k])],
};

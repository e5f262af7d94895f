import { type Message, term } from '@cribwright/messages';
import type { PolicyKey } from '@cribwright/model';
import { type Dimension, poundForce } from '@cribwright/units';
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
  readonly doc: Message;
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
    doc: term('doc.limit--crossing-stress'),
    example: '500 psi',
  },
  'crossing basis': {
    dimensions: [],
    words: ['flat rule', 'species', 'lesser'],
    safest: 'lesser',
    doc: term('doc.limit--crossing-basis'),
    example: 'lesser',
  },
  'crossing rounding': {
    dimensions: weight,
    // A pound: nothing can be rounded to a multiple of none.
    atLeast: poundForce,
    doc: term('doc.limit--crossing-rounding'),
    example: '500 lb',
  },
  'height ratio all contacts': {
    dimensions: ratio,
    doc: term('doc.limit--height-ratio-all-contacts'),
    example: '3',
  },
  'height ratio some contacts': {
    dimensions: ratio,
    doc: term('doc.limit--height-ratio-some-contacts'),
    example: '1.5',
  },
  'height ratio one contact': {
    dimensions: ratio,
    doc: term('doc.limit--height-ratio-one-contact'),
    example: '1',
  },
  'least overhang': {
    dimensions: length,
    doc: term('doc.limit--least-overhang'),
    example: '4 in',
  },
  'most overhang': {
    dimensions: length,
    doc: term('doc.limit--most-overhang'),
    example: '6 in',
  },
  'wedge travel': {
    dimensions: length,
    range: true,
    doc: term('doc.limit--wedge-travel'),
    example: '0.5 in to 2 in',
  },
  'most shims': {
    dimensions: length,
    doc: term('doc.limit--most-shims'),
    example: '2 in',
  },
  'most packing': {
    dimensions: length,
    doc: term('doc.limit--most-packing'),
    example: '4 in',
  },
  'joist reach': {
    dimensions: length,
    doc: term('doc.limit--joist-reach'),
    example: '1.5 in',
  },
  'contact alignment': {
    dimensions: length,
    doc: term('doc.limit--contact-alignment'),
    example: '1 in',
  },
  'steepest capture': {
    dimensions: angle,
    doc: term('doc.limit--steepest-capture'),
    example: '5 deg',
  },
  'least strut angle': {
    dimensions: angle,
    doc: term('doc.limit--least-strut-angle'),
    example: '45 deg',
  },
  'most strut angle': {
    dimensions: angle,
    doc: term('doc.limit--most-strut-angle'),
    example: '75 deg',
  },
  'push margin': {
    percent: true,
    dimensions: ratio,
    doc: term('doc.limit--push-margin'),
    example: '10 %',
  },
  'push height': {
    dimensions: length,
    words: ['cargo center', 'top of body'],
    doc: term('doc.limit--push-height'),
    example: 'cargo center',
  },
  'use limit': {
    percent: true,
    dimensions: ratio,
    doc: term('doc.limit--use-limit'),
    example: '100 %',
  },
  'friction timber on timber': {
    dimensions: ratio,
    doc: term('doc.limit--friction-timber-on-timber'),
    example: '0.4',
  },
  'friction timber on metal': {
    dimensions: ratio,
    doc: term('doc.limit--friction-timber-on-metal'),
    example: '0.3',
  },
  'friction strut base': {
    dimensions: ratio,
    doc: term('doc.limit--friction-strut-base'),
    example: '0.4',
  },
  'grade needing chocks': {
    percent: true,
    dimensions: ['ratio', 'angle'],
    doc: term('doc.limit--grade-needing-chocks'),
    example: '0 %',
  },
  'dressed size of 8x8': {
    dimensions: [],
    words: ['dry', 'green'],
    safest: 'dry',
    doc: term('doc.limit--dressed-size-of-8x8'),
    example: 'dry',
  },
  'axle limit single': {
    dimensions: weight,
    doc: term('doc.limit--axle-limit-single'),
    example: '20,000 lb',
  },
  'axle limit tandem': {
    dimensions: weight,
    doc: term('doc.limit--axle-limit-tandem'),
    example: '34,000 lb',
  },
  'gross limit': {
    dimensions: weight,
    doc: term('doc.limit--gross-limit'),
    example: '80,000 lb',
  },
  'egress width': {
    dimensions: length,
    doc: term('doc.limit--egress-width'),
    example: '3 ft',
  },
  'post slenderness': {
    dimensions: ratio,
    doc: term('doc.limit--post-slenderness'),
    example: '50',
  },
  'sudden loss factor': {
    dimensions: ratio,
    atLeast: 1,
    doc: term('doc.limit--sudden-loss-factor'),
    example: '2',
  },
  'stiffness spread': {
    dimensions: ratio,
    atLeast: 1,
    doc: term('doc.limit--stiffness-spread'),
    example: '2',
  },
  'ground under cribs': {
    dimensions: [],
    words: ['by pressure', 'may give way'],
    safest: 'may give way',
    doc: term('doc.limit--ground-under-cribs'),
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
  doc: term('doc.policy--authority'),
  example: 'authority "Alder Ridge County Fire, Special Operations"',
});

export const policy: BlockSchema = {
  keyword: 'policy',
  within: ['file'],
  doc: term('doc.policy'),
  example: 'policy CountyPolicy : Shipped {\n  height ratio some contacts 1.5 source common practice\n}',
  head: { name: 'required', title: 'optional', type: { kinds: ['policy'], required: false, extends: true } },
  declares: 'policy',
  element: 'policy',
  bodyOptional: false,
  properties: [authority, ...policyKeys.map((k) => limitLines[k])],
};

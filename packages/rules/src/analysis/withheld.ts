import type { Plan, UnreadPart } from '@cribwright/model';

/** Rules that judge one element by what is written of it, whatever else stands in the plan. */
export const ofOneElement: readonly string[] = [
  'acceptance-expired',
  'count-mismatch',
  'crib-base',
  'crib-height',
  'crib-layout',
  'crib-mixed-timber',
  'crib-overhang',
  'expectation-unmet',
  'geometry-impossible',
  'part-cannot-bear',
  'policy-loosened',
  'post-slender',
  'strut-angle',
  'strut-length',
  'strut-lock',
];

/** Rules that judge one element and the vehicle that it meets. */
export const ofOneContact: readonly string[] = [
  'crib-alignment',
  'crib-eccentric',
  'crib-reach',
  'crib-wedge',
  'joist-miss',
  'strut-head',
];

/** Rules that need all steps, and who comes with what. */
export const ofSteps: readonly string[] = [
  'cache-short',
  'cache-unknown',
  'count-mismatch',
  'crew-short',
  'lifting-intent',
  'loss-of-support',
  'order-ground-up',
  'order-missing',
  'stage-unsafe',
  'wheels-unchocked',
];

/**
 * Whether a rule is not run on a plan of which part was not read: it would take what is missing for not there, or
 * work out loads without it.
 */
export const isWithheld = (rule: string, { unread = [] }: Pick<Plan, 'unread'>): boolean =>
  unread.some((part) => withheldBy[part](rule));

const withheldBy: Readonly<Record<UnreadPart, (rule: string) => boolean>> = {
  'size up': (rule) => rule === 'size-up-missing',
  steps: (rule) => ofSteps.includes(rule),
  vehicle: (rule) => !ofOneElement.includes(rule),
  rest: (rule) => !ofOneElement.includes(rule) && !ofOneContact.includes(rule),
};

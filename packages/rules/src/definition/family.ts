import { type Message, term } from '@cribwright/messages';

/** What rules are about, in the order of the list of rules. */
export const families = [
  'timber and cribs',
  'struts and ties',
  'whole system',
  'order and crew',
  'stock',
  'plausibility',
  'policy and review',
] as const;

/** What a rule is about. */
export type Family = (typeof families)[number];

/** The heading of a family in the list of rules. */
export const familyTitle: Readonly<Record<Family, Message>> = {
  'timber and cribs': term('rule.family-timber-and-cribs'),
  'struts and ties': term('rule.family-struts-and-ties'),
  'whole system': term('rule.family-whole-system'),
  'order and crew': term('rule.family-order-and-crew'),
  stock: term('rule.family-stock'),
  plausibility: term('rule.family-plausibility'),
  'policy and review': term('rule.family-policy-and-review'),
};

import type { TermId } from '@cribwright/messages';

/** What a new name is for. */
export const nameLabels = {
  value: 'expected.name-value',
  group: 'expected.name-group',
  mount: 'expected.name-mount',
  part: 'expected.name-part',
} as const satisfies Readonly<Record<string, TermId>>;

/** What a text in quotes says. */
export const textLabels = {
  title: 'expected.text-title',
  'table or section': 'expected.text-table-or-section',
  'what is remembered': 'expected.text-what-is-remembered',
  address: 'expected.text-address',
  contact: 'expected.text-contact',
  access: 'expected.text-access',
  hazard: 'expected.text-hazard',
  where: 'expected.text-where',
  doors: 'expected.text-doors',
  reason: 'expected.text-reason',
  'who sets it': 'expected.text-who-sets-it',
  'what to mind': 'expected.text-what-to-mind',
  'what it is': 'expected.text-what-it-is',
  name: 'expected.text-name',
  question: 'expected.text-question',
  'line left out': 'expected.text-line-left-out',
  hint: 'expected.text-hint',
  'what it teaches': 'expected.text-what-it-teaches',
  paragraph: 'expected.text-paragraph',
  crew: 'expected.text-crew',
  'what was found': 'expected.text-what-was-found',
  'why not': 'expected.text-why-not',
} as const satisfies Readonly<Record<string, TermId>>;

export type NameLabel = keyof typeof nameLabels;
export type TextLabel = keyof typeof textLabels;

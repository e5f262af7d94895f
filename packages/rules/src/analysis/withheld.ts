import type { Plan, UnreadPart } from '@cribwright/model';
import type { Rule } from '../definition/rule.js';

type Judgment = Pick<Rule, 'judges' | 'readsAlso'>;

/**
 * Whether a rule is not run on a plan of which part was not read: it would take what is missing for not there, or
 * work out loads without it.
 */
export const isWithheld = (rule: Judgment, { unread = [] }: Pick<Plan, 'unread'>): boolean =>
  unread.some((part) => withheldBy[part](rule));

const withheldBy: Readonly<Record<UnreadPart, (rule: Judgment) => boolean>> = {
  'size up': ({ readsAlso = [] }) => readsAlso.includes('size up'),
  steps: ({ readsAlso = [] }) => readsAlso.includes('steps'),
  vehicle: ({ judges }) => judges !== 'element',
  rest: ({ judges }) => judges === 'plan',
};

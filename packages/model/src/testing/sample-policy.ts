import type { SourceNote } from '@cribwright/messages';
import { between } from '../plan/interval.js';
import type { Policy, PolicyKey, PolicyLimit } from '../plan/policy.js';
import { degree, foot, inch, lb, psi } from './measures.js';

const practice: SourceNote = { kind: 'common practice' };
const published = (title: string, locator: string): SourceNote => ({ kind: 'published', title, locator });
const memory = (title: string): SourceNote => ({ kind: 'from memory', title });
const rescueSystems = 'Rescue Systems 1 (California State Fire Training)';
const friction = published('OpenStax University Physics, volume 1', 'Table 6.1');

const values: Readonly<Record<PolicyKey, readonly [PolicyLimit['value'], SourceNote]>> = {
  'crossing stress': [500 * psi, published(rescueSystems, 'chapter 30: 24,000 lb on 2 by 2 of 4×4')],
  'crossing basis': ['lesser', practice],
  'crossing rounding': [1000 * lb, published(rescueSystems, 'chapter 30: 24,500 lb printed as 24,000 lb')],
  'height ratio all contacts': [3, practice],
  'height ratio some contacts': [1.5, practice],
  'height ratio one contact': [1, memory('US Army Corps of Engineers Shoring Operations Guide, section 2')],
  'least overhang': [4 * inch, practice],
  'most overhang': [6 * inch, practice],
  'wedge travel': [between(0.5 * inch, 2 * inch), practice],
  'most shims': [2 * inch, practice],
  'most packing': [4 * inch, practice],
  'joist reach': [2 * inch, practice],
  'contact alignment': [1 * inch, practice],
  'steepest capture': [10 * degree, practice],
  'least strut angle': [45 * degree, practice],
  'most strut angle': [75 * degree, practice],
  'push margin': [0.1, published('FEMA Rescue Specialist course', 'Module 1A: 10 % of the vertical load')],
  'push height': ['cargo center', practice],
  'use limit': [1, practice],
  'friction timber on timber': [0.45, published('CTU Code', 'appendix 2')],
  'friction timber on metal': [0.3, published('CTU Code', 'appendix 2')],
  'friction strut base': [0.3, friction],
  'grade needing chocks': [0, practice],
  'dressed size of 8x8': ['dry', published('PS 20', 'timbers of 7 in and more: 3/4 in off, dry')],
  'axle limit single': [20000 * lb, published('23 CFR 658.17', '(c)')],
  'axle limit tandem': [34000 * lb, published('23 CFR 658.17', '(d)')],
  'gross limit': [80000 * lb, published('23 CFR 658.17', '(b)')],
  'egress width': [3 * foot, practice],
  'post slenderness': [50, memory('NDS 3.7.1.4')],
  'stiffness spread': [2, practice],
  'ground under cribs': ['by pressure', practice],
};

/** The limits that ship, as data: what `policy` blocks start from. */
export const shippedPolicy: Policy = {
  id: 'policy/Shipped',
  name: 'Shipped',
  extends: [],
  limits: Object.fromEntries(
    Object.entries(values).map(([key, [value, source]]) => [
      key,
      { key, value, source, loosened: false, ref: { element: 'policy/Shipped', property: key } },
    ]),
  ) as Policy['limits'],
  ref: { element: 'policy/Shipped' },
};

/** The shipped policy with one limit set otherwise. */
export const policyWith = (key: PolicyKey, value: PolicyLimit['value']): Policy => ({
  ...shippedPolicy,
  limits: { ...shippedPolicy.limits, [key]: { ...shippedPolicy.limits[key], value } },
});

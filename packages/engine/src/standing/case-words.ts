import { type List, list, type Message, message, term } from '@cribwright/messages';
import { cornerWords } from '../loss/corner-words.js';
import type { CaseOf } from './standing.js';
import type { Group } from './standing-scene.js';

/** The corner of the ranges, and whether tools push. Nothing where neither is there. */
export function caseWords(group: Group, { corner, tools }: CaseOf): List | undefined {
  const where = cornerWords({ component: group }, corner);
  const parts: (Message | List)[] = [
    ...(where === undefined ? [] : [where]),
    ...(tools ? [term('range.tool-loads')] : []),
  ];
  return parts.length === 0 ? undefined : list(parts, 'plain');
}

/** The same behind a finding: ` with trailer heaviest`. */
export function whenWords(group: Group, of: CaseOf): Message | undefined {
  const words = caseWords(group, of);
  return words === undefined ? undefined : message('standing.when', { case: words });
}

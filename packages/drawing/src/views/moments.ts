import type { Analysis } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { planWords } from '../text/say.js';

/** A choice in a list: its id and its words. */
export interface Titled {
  readonly id: string;
  readonly title: string;
}

/** The stages of a plan, in the words of its drawings. */
export const stageTitles = (
  plan: Plan,
  { stages }: Analysis,
  words: Words = planWords(plan),
): readonly Titled[] => titled(words, stages);

/** What may give way at a stage, in the words of its drawings. Without a stage: when all is built. */
export const lossTitles = (
  plan: Plan,
  { stages }: Analysis,
  stage?: number,
  words: Words = planWords(plan),
): readonly Titled[] => titled(words, stages[stage ?? stages.length - 1]?.losses ?? []);

function titled(
  words: Words,
  list: Analysis['stages'] | Analysis['stages'][number]['losses'],
): readonly Titled[] {
  return list.map(({ id, title }) => ({ id, title: words.message(title) }));
}

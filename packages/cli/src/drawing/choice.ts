import { lossTitles, type ThemeName, type View, type ViewChoice, viewsOf } from '@cribwright/drawing';
import type { Analysis } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { closest } from '@cribwright/units';

/** What was asked for on the command line, as words. */
export interface Asked {
  readonly view?: string;
  readonly subject?: string;
  readonly stage?: string;
  readonly lost?: string;
  readonly theme?: string;
}

/** Words that cannot be answered, with what could be said instead. */
export class NotUnderstood extends Error {}

export const themes: readonly ThemeName[] = ['light', 'dark', 'high contrast', 'high contrast light'];

/**
 * The choice that the words make, for one plan.
 *
 * @param words the language in which a loss may be named, beside English
 * @throws NotUnderstood
 */
export function choiceOf(asked: Asked, plan: Plan, analysis: Analysis, words?: Words): ViewChoice {
  const offered = viewsOf(plan, analysis);
  const view = pick('view', asked.view ?? 'top', offered, (v) => v.id);
  return {
    view: view.id,
    subject: asked.subject === undefined ? undefined : subjectOf(asked.subject, view, plan),
    stage: asked.stage === undefined ? undefined : stageOf(asked.stage, analysis),
    lost: asked.lost === undefined ? undefined : lostOf(asked, plan, analysis, words),
  };
}

export const themeOf = (word: string): ThemeName =>
  pick('theme', word.replaceAll('-', ' '), themes, (t) => t);

function subjectOf(word: string, view: View, plan: Plan): string {
  const among = [...plan.cribs, ...plan.struts].filter((s) => view.subject?.includes(s.kind) ?? true);
  return pick('support', word, among, (s) => s.name).id;
}

/** `0` is as found, `1` after the first step that changes what stands. */
function stageOf(word: string, analysis: Analysis): number {
  const number = Number(word);
  const last = analysis.stages.length - 1;
  if (!Number.isInteger(number) || number < 0 || number > last)
    throw new NotUnderstood(`There is no stage ${word}. This plan has stages 0 (as found) to ${last}.`);
  return number;
}

function lostOf(asked: Asked, plan: Plan, analysis: Analysis, words?: Words): string {
  const stage = asked.stage === undefined ? undefined : stageOf(asked.stage, analysis);
  const word = asked.lost ?? '';
  const english = lossTitles(plan, analysis, stage).find((l) => l.title.toLowerCase() === word.toLowerCase());
  return (english ?? pick('loss', word, lossTitles(plan, analysis, stage, words), (l) => l.title)).id;
}

/** Views that had another name. */
const renamedViews: Readonly<Record<string, string>> = {
  plan: 'top',
  use: 'utilization',
  space: '3d',
  push: 'side push',
  'time line': 'timeline',
};

function pick<T>(what: string, word: string, among: readonly T[], nameOf: (one: T) => string): T {
  const found = among.find((one) => nameOf(one).toLowerCase() === word.toLowerCase());
  if (found !== undefined) return found;
  const names = among.map(nameOf);
  const near = names.find((name) => name === renamedViews[word.toLowerCase()]) ?? closest(word, names);
  const list = names.length === 0 ? 'This plan has none.' : `There are: ${names.join(', ')}.`;
  const meant = near === undefined ? '' : ` Did you mean ${near}?`;
  throw new NotUnderstood(`There is no ${what} “${word}”.${meant} ${list}`);
}

import { lossTitles, type ThemeName, type View, type ViewChoice, viewsOf } from '@cribwright/drawing';
import type { Analysis } from '@cribwright/engine';
import { list, type Message, message, name, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { closest } from '@cribwright/units';
import { NotUnderstood } from '../terminal/not-understood.js';

/** What was asked for on the command line, as words. */
export interface Asked {
  readonly view?: string;
  readonly subject?: string;
  readonly stage?: string;
  readonly lost?: string;
  readonly theme?: string;
}

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
    throw new NotUnderstood(message('cli.no-stage', { stage: name(word), last: name(String(last)) }));
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

type What = 'view' | 'theme' | 'support' | 'loss';

/** One message for each, because "no" follows the gender of the noun in Spanish. */
const notThere = {
  view: 'cli.no-view',
  theme: 'cli.no-theme',
  support: 'cli.no-support',
  loss: 'cli.no-loss',
} as const satisfies Record<What, string>;

function pick<T>(what: What, word: string, among: readonly T[], nameOf: (one: T) => string): T {
  const found = among.find((one) => nameOf(one).toLowerCase() === word.toLowerCase());
  if (found !== undefined) return found;
  const names = among.map(nameOf);
  const near = names.find((n) => n === renamedViews[word.toLowerCase()]) ?? closest(word, names);
  throw new NotUnderstood(
    message(notThere[what], { word: name(word) }),
    ...(near === undefined ? [] : [message('cli.did-you-mean', { near: name(near) })]),
    choices(names),
  );
}

const choices = (names: readonly string[]): Message =>
  names.length === 0
    ? term('cli.plan-has-none')
    : message('cli.there-are', { names: list(names.map(name), 'plain') });

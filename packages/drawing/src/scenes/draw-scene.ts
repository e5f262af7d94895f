import type { Analysis } from '@cribwright/engine';
import { message, name, type Phrase, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { cautionIn } from '../caution.js';
import { views } from '../generated/views.js';
import { lookAt, type Shown } from '../look/look.js';
import { notWholeWords } from '../look/not-whole.js';
import { at, text } from '../scene/draw.js';
import type { Scene, ViewChoice, ViewId } from '../scene/scene.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, type } from '../sheet/sizes.js';
import { planWords } from '../text/say.js';
import type { NamedView, View } from '../views/view.js';

/** What is shown first. */
export const firstChoice: ViewChoice = {
  view: 'top',
  subject: undefined,
  stage: undefined,
  lost: undefined,
};

/**
 * The views that have something to show for a plan, in the order of their tabs.
 *
 * @param pending some of the checks are still at work; the views that wait for them are among these
 * @param words the language of their names
 */
export const viewsOf = (
  plan: Plan,
  analysis: Analysis,
  pending = false,
  words: Words = planWords(plan),
): readonly NamedView[] =>
  views
    .filter((v) => v.offered(plan, analysis) || waits(v, plan, analysis, pending))
    .map((v) => ({ ...v, name: words.message(v.name), shows: words.message(v.shows) }));

/** The view of an id. `undefined` where there is none. */
export const viewNamed = (id: ViewId): View | undefined => views.find((v) => v.id === id);

/**
 * Draws one view of a plan. Never throws: a view that fails becomes a sheet that says so, with the caution on it. A
 * view of what the checks find says that it waits, as long as they are at work.
 *
 * @param analysis with `partial` where the plan was not read whole: the drawing says so, and what was not read
 * @param pending some of the checks are still at work
 * @param words the language and the units of the drawing; left out, English and the plan's units
 */
export function drawScene(
  plan: Plan,
  analysis: Shown,
  choice: ViewChoice,
  pending = false,
  words: Words = planWords(plan),
): Scene {
  const without = (title: Phrase, why: Phrase): Scene =>
    wordsAlone(choice, words.message(title), words.message(why), plan, analysis, words);
  const none = term('view.no-drawing');
  const view = viewNamed(choice.view);
  if (view === undefined) return without(none, message('view.no-such-view', { view: name(choice.view) }));
  if (waits(view, plan, analysis, pending)) return without(view.name, term('view.waits'));
  if (!view.offered(plan, analysis))
    return without(none, message('view.nothing-to-show', { view: view.name }));
  try {
    return view.draw(lookAt(plan, analysis, choice, words));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return without(none, message('view.failed', { view: view.name, reason: name(why) }));
  }
}

/** What the panel shows for a choice: one sheet. Never empty. */
export const scenesFor = (
  plan: Plan,
  analysis: Shown,
  choice: ViewChoice,
  pending = false,
  words: Words = planWords(plan),
): readonly Scene[] => [drawScene(plan, analysis, choice, pending, words)];

/** Whether a view must wait: for any check at all, or for the one that it alone is about. */
const waits = (view: View, plan: Plan, analysis: Analysis, pending: boolean): boolean =>
  view.awaits?.(plan) === true && (analysis.unchecked === true || (pending && !view.offered(plan, analysis)));

/** A sheet with words in place of a drawing. */
function wordsAlone(
  choice: ViewChoice,
  title: string,
  why: string,
  plan: Plan,
  analysis: Shown,
  words: Words,
): Scene {
  const mark = notWholeWords(analysis, 2, words);
  const head = { title, lines: [plan.title], alarms: mark === undefined ? [] : [mark] };
  const top = heading(head).bottom;
  return sheet({
    choice,
    heading: head,
    spoken: `${mark === undefined ? '' : `${mark} `}${why} ${cautionIn(words).text}`,
    body: [text('why', at(margin, top + 8), why, type.subtitle)],
    bottom: top + 14,
    legend: [],
    words,
  });
}

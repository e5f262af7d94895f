import type { Analysis } from '@cribwright/engine';
import { caution } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { views } from '../generated/views.js';
import { lookAt, type Shown } from '../look/look.js';
import { notWholeWords } from '../look/not-whole.js';
import { at, text } from '../scene/draw.js';
import type { Scene, ViewChoice, ViewId } from '../scene/scene.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, type } from '../sheet/sizes.js';
import type { View } from '../views/view.js';

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
 */
export const viewsOf = (plan: Plan, analysis: Analysis, pending = false): readonly View[] =>
  views.filter((v) => v.offered(plan, analysis) || waits(v, plan, analysis, pending));

export const viewNamed = (id: ViewId): View | undefined => views.find((v) => v.id === id);

/**
 * Draws one view of a plan. Never throws: a view that fails becomes a sheet that says so, with the caution on it. A
 * view of what the checks find says that it waits, as long as they are at work.
 *
 * @param analysis with `partial` where the plan was not read whole: the drawing says so, and what was not read
 * @param pending some of the checks are still at work
 */
export function drawScene(plan: Plan, analysis: Shown, choice: ViewChoice, pending = false): Scene {
  const view = viewNamed(choice.view);
  if (view === undefined)
    return without(choice, 'No drawing', `There is no view called “${choice.view}”.`, plan, analysis);
  if (waits(view, plan, analysis, pending))
    return without(
      choice,
      view.name,
      'Not checked yet. What this view shows is being worked out.',
      plan,
      analysis,
    );
  if (!view.offered(plan, analysis))
    return without(
      choice,
      'No drawing',
      `This plan has nothing to show in the view “${view.name}”.`,
      plan,
      analysis,
    );
  try {
    return view.draw(lookAt(plan, analysis, choice));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return without(
      choice,
      'No drawing',
      `The view “${view.name}” could not be drawn (${why}). The checks are not affected.`,
      plan,
      analysis,
    );
  }
}

/** What the panel shows for a choice: one sheet. Never empty. */
export const scenesFor = (
  plan: Plan,
  analysis: Shown,
  choice: ViewChoice,
  pending = false,
): readonly Scene[] => [drawScene(plan, analysis, choice, pending)];

/** Whether a view must wait: for any check at all, or for the one that it alone is about. */
const waits = (view: View, plan: Plan, analysis: Analysis, pending: boolean): boolean =>
  view.awaits?.(plan) === true && (analysis.unchecked === true || (pending && !view.offered(plan, analysis)));

/** A sheet with words in place of a drawing. */
function without(choice: ViewChoice, title: string, words: string, plan: Plan, analysis: Shown): Scene {
  const mark = notWholeWords(analysis, 2);
  const head = { title, lines: [plan.title], alarms: mark === undefined ? [] : [mark] };
  const top = heading(head).bottom;
  return sheet({
    choice,
    heading: head,
    words: `${mark === undefined ? '' : `${mark} `}${words} ${caution}`,
    body: [text('why', at(margin, top + 8), words, type.subtitle)],
    bottom: top + 14,
    legend: [],
    display: plan.display,
  });
}

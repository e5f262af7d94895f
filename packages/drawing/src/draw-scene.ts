import type { Analysis, Plan } from '@cribwright/engine';
import { caution } from '@cribwright/engine';
import { views } from './generated/views.js';
import { at, text } from './scene/draw.js';
import type { Scene, ViewChoice, ViewId } from './scene/scene.js';
import { heading, sheet } from './sheet/sheet.js';
import { margin, type } from './sheet/sizes.js';
import { lookAt } from './views/look.js';
import type { View } from './views/view.js';

/** What is shown first. */
export const firstChoice: ViewChoice = {
  view: 'plan',
  subject: undefined,
  stage: undefined,
  lost: undefined,
};

/** The views that have something to show for a plan, in the order of their tabs. */
export const viewsOf = (plan: Plan, analysis: Analysis): readonly View[] =>
  views.filter((v) => v.offered(plan, analysis));

export const viewNamed = (id: ViewId): View | undefined => views.find((v) => v.id === id);

/**
 * Draws one view of a plan. Never throws: a view that fails becomes a sheet that says so, with the caution on it.
 */
export function drawScene(plan: Plan, analysis: Analysis, choice: ViewChoice): Scene {
  const view = viewNamed(choice.view);
  if (view === undefined) return failed(choice, `There is no view called “${choice.view}”.`, plan);
  if (!view.offered(plan, analysis))
    return failed(choice, `This plan has nothing to show in the view “${view.name}”.`, plan);
  try {
    return view.draw(lookAt(plan, analysis, choice));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return failed(
      choice,
      `The view “${view.name}” could not be drawn (${why}). The checks are not affected.`,
      plan,
    );
  }
}

/** What the panel shows for a choice: one sheet. Never empty. */
export const scenesFor = (plan: Plan, analysis: Analysis, choice: ViewChoice): readonly Scene[] => [
  drawScene(plan, analysis, choice),
];

function failed(choice: ViewChoice, words: string, plan: Plan): Scene {
  const title = { title: 'No drawing', lines: [plan.title] };
  const top = heading(title).bottom;
  return sheet({
    choice,
    heading: title,
    words: `${words} ${caution}`,
    body: [text('why', at(margin, top + 8), words, type.subtitle)],
    bottom: top + 14,
    legend: [],
    display: plan.display,
  });
}

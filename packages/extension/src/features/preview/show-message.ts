import {
  lossTitles,
  type Scene,
  type Shown,
  scenesFor,
  stageTitles,
  type View,
  type ViewChoice,
  viewsOf,
} from '@cribwright/drawing';
import { tally } from '@cribwright/engine';
import { count, type Locale, message, type Words, wordsIn } from '@cribwright/messages';
import type { ToPanel } from '@cribwright/preview';
import type { PlanReply } from '@cribwright/workspace';
import type { Drawable, DrawnPlan } from './last-good.js';
import { panelWords } from './panel-words.js';

export type Show = Extract<ToPanel, { readonly kind: 'show' }>;

/** The same with nothing left out of its drawings. */
export type Whole = Omit<Show, 'scenes'> & { readonly scenes: readonly Scene[] };

/** What is looked at: a plan of the file, and how. */
export interface Looking {
  readonly plan: number;
  readonly choice: ViewChoice;
}

export const firstLook: Looking = {
  plan: 0,
  choice: {
    view: 'top',
    subject: undefined,
    stage: undefined,
    lost: undefined,
  },
};

/**
 * The message that makes the panel draw a file. Choices that the plan no longer has are let go.
 *
 * @param locale the language of the drawing and of the panel; its units are those of the plan
 */
export const showMessage = (
  drawable: Drawable,
  looking: Looking,
  stale: string | undefined,
  locale: Locale = 'en',
): Whole => {
  const { uri, version, plans, pending } = drawable;
  const shown = Math.min(looking.plan, Math.max(0, plans.length - 1));
  const reply = plans[shown];
  const choice = reply ? within(reply, looking.choice) : looking.choice;
  const unchecked = reply?.analysis.unchecked === true;
  const words = wordsIn(locale, reply?.plan.display ?? 'us');
  return {
    kind: 'show',
    uri,
    version,
    plans: plans.map(({ plan }) => ({ title: plan.title })),
    shown,
    views: reply ? viewsOf(reply.plan, reply.analysis, pending, words).map(tab) : [],
    scenes: reply ? scenesFor(reply.plan, shownOf(reply), choice, pending, words) : [],
    stages: reply ? stageTitles(reply.plan, reply.analysis, words) : [],
    ...(unchecked
      ? {}
      : { losses: reply ? lossTitles(reply.plan, reply.analysis, choice.stage, words) : [] }),
    subjects: (reply?.analysis.supports ?? []).map(({ id, name, kind }) => ({
      id,
      name,
      kind,
    })),
    tally: { ...tallyOf(reply, drawable.errors, words), pending, ...(unchecked ? { unchecked } : {}) },
    words: panelWords(words),
    stale,
  };
};

/**
 * What a drawing shows. It says of itself where the plan, as it is written now, was not read whole: a drawing may be
 * saved or copied.
 */
export const shownOf = ({ analysis, partial, unread, old }: DrawnPlan): Shown =>
  partial || old ? { ...analysis, partial: true, unread } : analysis;

const tab = ({ id, name, subject }: View) => ({ id, name, ...(subject ? { about: subject } : {}) });

const within = ({ analysis }: PlanReply, choice: ViewChoice): ViewChoice => {
  const stage =
    choice.stage !== undefined && choice.stage < analysis.stages.length ? choice.stage : undefined;
  const losses = analysis.stages[stage ?? analysis.stages.length - 1]?.losses ?? [];
  return {
    view: choice.view,
    subject: analysis.supports.some(({ id }) => id === choice.subject) ? choice.subject : undefined,
    stage,
    // Before the checks have run, what may be lost is not known: the choice is kept for when it is.
    lost:
      analysis.unchecked === true || losses.some(({ id }) => id === choice.lost) ? choice.lost : undefined,
  };
};

const tallyOf = (reply: PlanReply | undefined, errors: boolean, words: Words): Show['tally'] => {
  const { danger, warning, note, accepted, notRun } = tally(reply?.analysis.findings ?? [], errors);
  const counted = [
    { level: 'danger', id: 'panel.unsafe', of: danger },
    { level: 'warning', id: 'panel.not-run', of: notRun },
    { level: 'warning', id: 'panel.warnings', of: warning },
    { level: 'note', id: 'panel.notes', of: note },
    { level: 'note', id: 'panel.accepted', of: accepted },
  ] as const;
  const parts = counted
    .filter(({ of }) => of > 0)
    .map(({ level, id, of }) => ({ level, text: words.message(message(id, { count: count(of) })) }));
  return { danger, warning, note, notRun, parts };
};

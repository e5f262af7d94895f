import { type Scene, type Shown, scenesFor, type View, type ViewChoice, viewsOf } from '@cribwright/drawing';
import type { PlanReply } from '@cribwright/language/protocol';
import type { ToPanel } from '@cribwright/preview';
import type { Drawable } from './last-good.js';

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

/** The message that makes the panel draw a file. Choices that the plan no longer has are let go. */
export const showMessage = (drawable: Drawable, looking: Looking, stale: string | undefined): Whole => {
  const { uri, version, plans, pending } = drawable;
  const shown = Math.min(looking.plan, Math.max(0, plans.length - 1));
  const reply = plans[shown];
  const choice = reply ? within(reply, looking.choice) : looking.choice;
  const stages = reply?.analysis.stages ?? [];
  const unchecked = reply?.analysis.unchecked === true;
  const stage = stages[choice.stage ?? stages.length - 1];
  return {
    kind: 'show',
    uri,
    version,
    plans: plans.map(({ plan }) => ({ title: plan.title })),
    shown,
    views: reply ? viewsOf(reply.plan, reply.analysis, pending).map(tab) : [],
    scenes: reply ? scenesFor(reply.plan, shownOf(reply), choice, pending) : [],
    stages: stages.map(({ id, title }) => ({ id, title })),
    ...(unchecked ? {} : { losses: (stage?.losses ?? []).map(({ id, title }) => ({ id, title })) }),
    subjects: (reply?.analysis.supports ?? []).map(({ id, name, kind }) => ({
      id,
      name,
      kind,
    })),
    tally: { ...tally(reply), pending, ...(unchecked ? { unchecked } : {}) },
    stale,
  };
};

/** What a drawing shows, which says of itself where the text could not be read whole: it may be saved or copied. */
const shownOf = ({ analysis, partial }: PlanReply): Shown => (partial ? { ...analysis, partial } : analysis);

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

const tally = (reply: PlanReply | undefined): Show['tally'] => {
  const findings = (reply?.analysis.findings ?? []).filter(({ accepted }) => accepted === undefined);
  const of = (severity: string) =>
    findings.filter((f) => f.severity === severity && f.couldNotRun !== true).length;
  return {
    danger: of('danger'),
    warning: of('warning'),
    note: of('note'),
    notRun: findings.filter(({ couldNotRun }) => couldNotRun === true).length,
  };
};

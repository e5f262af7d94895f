import { alike } from '@cribwright/drawing';
import type { AnalysisReply, PlanReply } from '@cribwright/workspace';

/** A plan as it is drawn. */
export interface DrawnPlan extends PlanReply {
  /** It is drawn as it was last read whole; `unread` says what cannot be read now. */
  readonly old?: true;
}

/** What a panel can draw of a file. The panel is never blank because the text has an error. */
export interface Drawable {
  readonly uri: string;
  /** Version of the text as it is now, which an edit must name. */
  readonly version: number;
  readonly plans: readonly DrawnPlan[];
  /** A heavy check is still being worked out. */
  readonly pending: boolean;
  /** The text has errors: some check could not run. */
  readonly errors: boolean;
  /** Why what is drawn is not all that is written. */
  readonly stale: 'last good' | 'as far as read' | undefined;
}

/**
 * Keeps the last whole reading of a file and joins each new reading to it: a plan that cannot be read whole is
 * shown as it was last read whole.
 */
export const joined = (before: Drawable | undefined, reply: AnalysisReply): Drawable => {
  const { uri, version, pending } = reply;
  const errors = reply.state === 'errors';
  const kept = before?.uri === uri ? before.plans : [];
  // What did not change is the same object as before: then it is not drawn again.
  const plans = reply.plans.map((p, i) => {
    const plan = alike(kept[i]?.plan, p.plan);
    // A layout brings no places: those of the reading before are good enough for the moment.
    const places = p.analysis.unchecked === true ? (kept[i]?.places ?? {}) : p.places;
    return plan === p.plan && places === p.places ? p : { ...p, plan, places };
  });
  if (!errors) return { uri, version, pending, errors, plans, stale: undefined };
  if (plans.length === 0) {
    return {
      uri,
      version,
      pending,
      errors,
      plans: kept.map((plan) => ({ ...plan, old: true as const })),
      stale: kept.length > 0 ? 'last good' : undefined,
    };
  }
  const pairs = plans.map((plan, index) => ({
    plan,
    good: plan.partial ? twin(kept, plan, index) : plan,
  }));
  const drawn = pairs.map(({ plan, good }) => good ?? plan);
  if (drawn.every(({ partial }) => !partial) && pairs.some(({ plan }) => plan.partial)) {
    return { uri, version, pending, errors, plans: drawn, stale: 'last good' };
  }
  return {
    uri,
    version,
    pending,
    errors,
    plans: drawn,
    stale: pairs.some(({ plan }) => plan.partial) ? 'as far as read' : undefined,
  };
};

/** The same plan as it was last read whole: by title, else by its place in the file. */
const twin = (kept: readonly DrawnPlan[], plan: PlanReply, index: number): DrawnPlan | undefined => {
  const found = kept.find((k) => k.plan.title === plan.plan.title) ?? kept[index];
  return !found || found.partial ? undefined : { ...found, old: true, unread: plan.unread };
};

import type { Analysis, AnalyzeOptions } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { analyze, analyzeInSteps } from '@cribwright/rules';
import type { Pending } from './checked.js';

export interface AnalysesSettings {
  /** ISO date of the reader's day. */
  readonly today?: string | undefined;
  /** Also work out how hard a push each plan holds, and write out its sums. */
  readonly push?: boolean | undefined;
  /** Answer before the loads are there, where these take longer than `over` ms by the clock. */
  readonly timeLimit?: { readonly now: () => number; readonly over: number } | undefined;
}

/** An analysis as far as it has come. */
export interface Known {
  readonly analysis: Analysis;
  readonly pending: Pending | undefined;
}

/** An analysis that is under way. */
interface Begun {
  readonly key: string;
  readonly to: Pending;
  readonly steps: Generator<void, Analysis>;
  /** Spent on it so far, ms. */
  spent: number;
}

/** As many supports as are remembered beside those of the plans of today: some steps back, for who undoes what was typed. */
const most = 500;

/**
 * Remembers analyses by the value of the plan, so that an edit in a comment, or of the title, works nothing out anew.
 * Does what is heavy in steps, and drops what was begun for a plan that is no longer asked about. A plan goes by its
 * place: the file, and which of its plans.
 */
export class Analyses {
  private readonly kept = new Map<string, Known>();
  private readonly begun = new Map<string, Begun>();
  /** Places at which the loads took long the last time. */
  private readonly slow = new Set<string>();
  private readonly keys = new WeakMap<Plan, string>();
  /** The keys of the plans that each file holds now: these are not forgotten, however many they are. */
  private readonly held = new Map<string, readonly string[]>();
  private allHeld: ReadonlySet<string> = new Set();
  private readonly titled = new WeakMap<Analysis, Map<string, Analysis>>();

  constructor(private readonly settings: AnalysesSettings) {}

  /** Says which plans a file holds now. */
  hold(uri: string, plans: readonly Plan[]): void {
    if (plans.length === 0) this.held.delete(uri);
    else
      this.held.set(
        uri,
        plans.map((plan) => this.key(plan)),
      );
    this.allHeld = new Set([...this.held.values()].flat());
  }

  /** The best answer within the time limit. Without `timeLimit` that is everything. */
  of(plan: Plan, place: string): Known {
    const { analysis, pending } = this.untitled(plan, place);
    return { analysis: this.withTitle(analysis, plan.title), pending };
  }

  /** What is known of a plan without working anything out. */
  known(plan: Plan): Analysis | undefined {
    const found = this.kept.get(this.key(plan));
    return found && this.withTitle(found.analysis, plan.title);
  }

  /** Of the same plan under whatever title it had when it was analyzed. */
  private untitled(plan: Plan, place: string): Known {
    const key = this.key(plan);
    const known = this.kept.get(key);
    if (known) {
      if (this.allHeld.has(key)) return known;
      // The last one asked for is the last to be forgotten.
      this.kept.delete(key);
      this.kept.set(key, known);
      return known;
    }
    const { timeLimit, push = false } = this.settings;
    if (!timeLimit)
      return this.remember(key, {
        analysis: analyze(plan, { ...this.options(), push, paper: push, endsAlone: !push }),
        pending: push ? undefined : 'push',
      });
    if (!this.slow.has(place)) {
      const work = this.begin(plan, place, 'loads');
      while (work.spent <= timeLimit.over) {
        const whole = this.step(work, place);
        if (whole) return whole;
      }
      this.slow.add(place);
    }
    return this.remember(key, {
      analysis: analyze(plan, { ...this.options(), loads: false }),
      pending: 'loads',
    });
  }

  /** Whether `of` would work out something, and not all of it at once. */
  waits(plan: Plan, place: string): boolean {
    return this.settings.timeLimit !== undefined && this.slow.has(place) && !this.kept.has(this.key(plan));
  }

  /** Whether the loads of a plan at this place took long the last time. */
  isSlow(place: string): boolean {
    return this.slow.has(place);
  }

  /** One step further with what is pending, as far as is wanted. `false` where nothing is left to do. */
  advance(plan: Plan, place: string, wanted: Pending): boolean {
    const { pending } = this.untitled(plan, place);
    if (pending === undefined || (wanted === 'loads' && pending === 'push')) return false;
    this.step(this.begin(plan, place, pending), place);
    return true;
  }

  private begin(plan: Plan, place: string, to: Pending): Begun {
    const key = this.key(plan);
    const before = this.begun.get(place);
    if (before?.key === key && before.to === to) return before;
    const push = to === 'push';
    // While somebody types, the ends of the ranges are tried alone; with the push comes what lies between.
    const steps = analyzeInSteps(plan, { ...this.options(), push, paper: push, endsAlone: !push });
    const work = { key, to, steps, spent: 0 };
    this.begun.set(place, work);
    return work;
  }

  private step(work: Begun, place: string): Known | undefined {
    const now = this.settings.timeLimit?.now ?? (() => 0);
    const begun = now();
    const step = work.steps.next();
    work.spent += now() - begun;
    if (step.done !== true) return undefined;
    this.begun.delete(place);
    if (work.to === 'loads') this.judge(place, work.spent);
    return this.remember(work.key, {
      analysis: step.value,
      pending: work.to === 'loads' ? 'push' : undefined,
    });
  }

  private judge(place: string, spent: number): void {
    if (spent > (this.settings.timeLimit?.over ?? Number.POSITIVE_INFINITY)) this.slow.add(place);
    else this.slow.delete(place);
  }

  /** The same object each time: who drew it knows by that whether to draw it again. */
  private withTitle(analysis: Analysis, title: string): Analysis {
    if (analysis.plan.title === title) return analysis;
    const others = this.titled.get(analysis) ?? new Map<string, Analysis>();
    const made = others.get(title) ?? { ...analysis, plan: { ...analysis.plan, title } };
    this.titled.set(analysis, others.set(title, made));
    return made;
  }

  /** Equal for plans that come to the same, on the same day. No check reads the title. */
  private key(plan: Plan): string {
    const known = this.keys.get(plan);
    if (known?.startsWith(`${this.settings.today ?? ''} `)) return known;
    const key = `${this.settings.today ?? ''} ${JSON.stringify({ ...plan, title: '' })}`;
    this.keys.set(plan, key);
    return key;
  }

  private remember(key: string, made: Known): Known {
    this.kept.delete(key);
    this.kept.set(key, made);
    const spare = [...this.kept].filter(([other]) => other !== key && !this.allHeld.has(other));
    let kept = spare.reduce((sum, [, { analysis }]) => sum + weight(analysis), 0);
    for (const [oldest, { analysis }] of spare) {
      if (kept <= most) break;
      this.kept.delete(oldest);
      kept -= weight(analysis);
    }
    return made;
  }

  private options(): AnalyzeOptions {
    const { today } = this.settings;
    return today === undefined ? {} : { today };
  }
}

const weight = ({ supports }: Analysis): number => supports.length + 1;

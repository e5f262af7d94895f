import {
  type Analysis,
  type AnalyzeOptions,
  analyze,
  analyzeInSteps,
  type Figure,
  type Finding,
  type Message,
  type Plan,
} from '@cribwright/engine';
import type { BoundFile } from '../binding/bound-file.js';
import type { Surroundings } from '../binding/file-scope.js';
import { planEditChanges } from '../edits/plan-edit-changes.js';
import { type Elaborated, elaborate } from '../elaboration/elaborate.js';
import { lessonProblems } from '../elaboration/lesson.js';
import type { Span } from '../grammar/syntax.js';
import type { LanguageProblem, TextChange } from '../problems/problem.js';
import { say } from '../problems/words.js';
import type { AnalysisReply, PlanReply } from '../protocol/requests.js';
import { rangeOf } from './lines.js';

/** Everything that is known of one file: what is wrong with its text, and what the checks say of its plans. */
export interface Checked {
  readonly uri: string;
  readonly version: number;
  readonly state: AnalysisReply['state'];
  readonly problems: readonly Problem[];
  readonly plans: readonly PlanReply[];
  /** The push that a plan holds is not worked out yet: nothing here may look as if all checks had run. */
  readonly pending: boolean;
  /** What the `let` comes to whose name starts there, worked out when asked. In a pattern: once for each use. */
  readonly valuesAt: (nameStart: number) => readonly Figure[];
}

export interface Problem {
  /** Of a text problem its code, of a finding its rule. */
  readonly code: string;
  readonly source: 'text' | 'plan';
  readonly severity: 'danger' | 'warning' | 'note' | 'unused';
  readonly message: Message;
  readonly span: Span;
  readonly related: readonly { readonly uri: string; readonly span: Span; readonly message: Message }[];
  readonly fixes: readonly ProblemFix[];
  readonly finding?: Finding;
  /** The title of the plan that a finding speaks of. */
  readonly plan?: string;
}

export interface ProblemFix {
  readonly title: Message;
  readonly safe: boolean;
  readonly edits: Readonly<Record<string, readonly TextChange[]>>;
}

interface Known {
  readonly analysis: Analysis;
  /** With the push. */
  readonly whole: boolean;
}

/** Remembers analyses by the value of the plan, so that an edit in a comment works nothing out anew. */
export class Checker {
  private readonly known = new Map<string, Known>();

  constructor(
    private readonly settings: { readonly today?: string | undefined; readonly push?: boolean | undefined },
  ) {}

  check(
    uri: string,
    file: BoundFile | undefined,
    around: Surroundings,
    display: 'us' | 'si' | undefined,
  ): Checked {
    if (!file)
      return {
        uri,
        version: 0,
        state: 'no plan',
        problems: [],
        plans: [],
        pending: false,
        valuesAt: () => [],
      };
    const elaborated = elaborate(file, around, display);
    const plans = elaborated.plans.map((made) => {
      const { analysis, whole } = this.analysis(made.plan);
      return { made, whole, reply: replyOf(made, analysis) };
    });
    const analysed = plans.map(({ made, reply }) => ({ block: made.block, analysis: reply.analysis }));
    const exercises = lessonProblems(file, around, analysed);
    const text = [...file.problems, ...elaborated.problems, ...exercises].map((p) => textProblem(p, uri));
    const found = plans.flatMap(({ made, reply }) => findings(uri, made, reply));
    const errors = text.some((p) => p.severity === 'danger');
    return {
      uri,
      version: file.version,
      state: errors ? 'errors' : plans.length === 0 ? 'no plan' : 'good',
      problems: [...text, ...found],
      plans: plans.map((p) => p.reply),
      pending: plans.some((p) => !p.whole),
      valuesAt: elaborated.valuesAt,
    };
  }

  /** Works out what `check` left open, and stops after each step: to go on later, or to be dropped. */
  *complete({ plans }: Checked): Generator<void, void> {
    for (const { plan } of plans) {
      if (this.analysis(plan).whole) continue;
      const analysis = yield* analyzeInSteps(plan, { ...this.options(), push: true, paper: true });
      this.remember(this.key(plan), { analysis, whole: true });
    }
  }

  private analysis(plan: Plan): Known {
    const key = this.key(plan);
    const known = this.known.get(key);
    const made = known ?? {
      analysis: analyze(plan, {
        ...this.options(),
        push: this.settings.push === true,
        paper: this.settings.push === true,
      }),
      whole: this.settings.push === true,
    };
    this.remember(key, made);
    return made;
  }

  /** Equal for plans that come to the same, on the same day. */
  private key(plan: Plan): string {
    return `${this.settings.today ?? ''} ${JSON.stringify(plan)}`;
  }

  private remember(key: string, made: Known): void {
    this.known.delete(key);
    this.known.set(key, made);
    if (this.known.size <= 60) return;
    const oldest = this.known.keys().next().value;
    if (oldest !== undefined) this.known.delete(oldest);
  }

  private options(): AnalyzeOptions {
    const { today } = this.settings;
    return today === undefined ? {} : { today };
  }
}

function replyOf({ plan, places, partial }: Elaborated, analysis: Analysis): PlanReply {
  const placesOut = Object.fromEntries(
    [...places].map(([key, { uri, span, text }]) => [key, { uri, range: rangeOf(text, span) }]),
  );
  return { plan, analysis, places: placesOut, partial };
}

const textProblem = (p: LanguageProblem, uri: string): Problem => ({
  code: p.code,
  source: 'text',
  severity: p.severity === 'error' ? 'danger' : p.severity,
  message: p.message,
  span: p.span,
  related: p.related,
  fixes: p.fixes.map((f) => ({ title: f.title, safe: f.safe, edits: { [uri]: f.edits } })),
});

function findings(uri: string, made: Elaborated, reply: PlanReply): readonly Problem[] {
  return reply.analysis.findings.map((finding) => {
    const here = [finding.at, finding.subject, made.plan.ref]
      .map((ref) => made.placeOf(ref))
      .find((place) => place.uri === uri);
    const cause = made.placeOf(finding.at);
    const far =
      cause.uri === uri
        ? []
        : [{ uri: cause.uri, span: cause.span, message: say('finding', { text: finding.message.text }) }];
    const related = finding.related.map(({ at, message }) => ({ ...pick(made.placeOf(at)), message }));
    return {
      code: finding.rule,
      source: 'plan' as const,
      severity: finding.severity,
      message: finding.message,
      span: (here ?? made.placeOf(made.plan.ref)).span,
      related: [...far, ...related],
      fixes: finding.fixes.flatMap((fix) => {
        const changes = planEditChanges({ block: made.block, text: made.text }, fix.edits);
        return 'refused' in changes ? [] : [{ title: fix.title, safe: fix.safe, edits: changes.changes }];
      }),
      finding,
      plan: made.plan.title,
    };
  });
}

const pick = ({ uri, span }: { uri: string; span: Span }) => ({ uri, span });

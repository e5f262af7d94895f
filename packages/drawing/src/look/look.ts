import type { Analysis, Finding, LoadCase, StageResult, SupportResult } from '@cribwright/engine';
import { type Message, message, name, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { ViewChoice } from '../scene/scene.js';
import type { Thing } from '../space/thing.js';
import { thingsOf } from '../space/things.js';
import { planWords, type Say, sayIn } from '../text/say.js';
import type { UnreadText } from './not-whole.js';

/** How one element stands at the moment that is drawn. */
export type Standing = 'stands' | 'adding' | 'later' | 'lost';

/** What is known of a plan, and whether it was read whole: `partial` where not, with what could not be read. */
export type Shown = Analysis & { readonly partial?: boolean; readonly unread?: readonly UnreadText[] };

/** What a view draws from: the plan, what is known of it, and the moment that is looked at. */
export interface Look {
  readonly plan: Plan;
  readonly analysis: Shown;
  readonly choice: ViewChoice;
  readonly say: Say;
  readonly things: readonly Thing[];
  /** The stage that is shown: the chosen one, or the last. `undefined` where the plan has no stages. */
  readonly stage: StageResult | undefined;
  /** Loads at that stage with nothing lost. */
  readonly asBuilt: LoadCase | undefined;
  /** Loads with the chosen support lost; `undefined` where none is chosen. */
  readonly lost: LoadCase | undefined;
  readonly standing: (element: string) => Standing;
  readonly findingsOn: (element: string) => readonly Finding[];
  readonly support: (element: string) => SupportResult | undefined;
  /** No check has run yet: what waits for one is shown as not checked, never left out as if it were well. */
  readonly unchecked: boolean;
}

/** What stands in place of a number that waits for the checks. */
export const notChecked: Message = term('view.not-checked');

export function lookAt(
  plan: Plan,
  analysis: Shown,
  choice: ViewChoice,
  words: Words = planWords(plan),
): Look {
  const index = choice.stage ?? analysis.stages.length - 1;
  const stage = analysis.stages[Math.max(0, Math.min(index, analysis.stages.length - 1))];
  const lost = stage?.losses.find((l) => l.id === choice.lost);
  const findings = new Map<string, Finding[]>();
  for (const finding of analysis.findings) {
    const on = findings.get(finding.subject.element);
    if (on === undefined) findings.set(finding.subject.element, [finding]);
    else on.push(finding);
  }
  const supports = new Map(analysis.supports.map((s) => [s.id, s]));
  return {
    plan,
    analysis,
    choice,
    say: sayIn(words),
    things: thingsOf(plan),
    stage,
    asBuilt: stage?.asBuilt,
    lost,
    standing: (element) => standing(element, choice.stage === undefined ? undefined : stage, lost),
    findingsOn: (element) => findings.get(element) ?? [],
    support: (element) => supports.get(element),
    unchecked: analysis.unchecked === true,
  };
}

function standing(element: string, stage: StageResult | undefined, lost: LoadCase | undefined): Standing {
  if (lost?.lost?.element === element && lost.lost.property === undefined) return 'lost';
  if (stage === undefined || element.startsWith('vehicle/')) return 'stands';
  if (stage.adding.includes(element)) return 'adding';
  return stage.standing.includes(element) ? 'stands' : 'later';
}

/** The words under a drawing's title: the plan, the moment, and what is lost. */
export function momentOf(look: Look): readonly string[] {
  const { analysis, choice, lost } = look;
  const { say } = look;
  const lines: string[] = [look.plan.title];
  if (choice.stage !== undefined && look.stage !== undefined) {
    const number = analysis.stages.indexOf(look.stage) + 1;
    lines.push(
      say.message(
        message('view.stage', {
          number: name(String(number)),
          total: name(String(analysis.stages.length)),
          title: look.stage.title,
          ...crewWords(look),
        }),
      ),
    );
  }
  if (lost !== undefined) {
    lines.push(
      say.message(
        lost.rests
          ? message('view.what-if-rests', { loss: lost.title })
          : message('view.what-if-free', { loss: lost.title, free: lost.free ?? term('view.the-load') }),
      ),
    );
  }
  return lines;
}

function crewWords(look: Look): { readonly crew?: Message; readonly duration?: Message } {
  const step = look.plan.steps.find((s) => s.id === look.stage?.step);
  return {
    ...(step?.crew === undefined
      ? {}
      : { crew: message('view.comma-crew', { crew: name(String(step.crew)) }) }),
    ...(step?.takes === undefined
      ? {}
      : { duration: message('view.comma-duration', { duration: name(look.say.duration(step.takes)) }) }),
  };
}

/** The gravest of some findings, where there is any. A check that could not run counts as a warning at least. */
export function gravest(findings: readonly Finding[]): 'danger' | 'warning' | 'note' | undefined {
  const open = findings.filter((f) => f.accepted === undefined);
  if (open.some((f) => f.severity === 'danger')) return 'danger';
  if (open.some((f) => f.severity === 'warning' || f.couldNotRun === true)) return 'warning';
  return open.length > 0 ? 'note' : undefined;
}

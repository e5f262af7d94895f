import type { Analysis, Finding } from '@cribwright/engine';
import type { BoundBlock } from '@cribwright/language';
import { exerciseProperties } from '@cribwright/language/internal';
import type { Figure } from '@cribwright/messages';
import { type Message, message, type Name, name as nameHole, term } from '@cribwright/messages';
import type { PlanReply } from '../reply/plan-reply.js';
import { lineOf } from './line-of.js';

interface From {
  readonly text: string;
  readonly all: readonly PlanReply[];
}

/** The key of an exercise, worked out from the plan it is about. */
export function answerTo(block: BoundBlock, plans: readonly BoundBlock[], from: From): Answer {
  const named = lineOf(block, exerciseProperties.plan)?.plan.text;
  const plan =
    named === undefined ? (plans.length === 1 ? plans[0] : undefined) : plans.find((p) => p.name === named);
  if (plan === undefined) return none(term('lesson.plan-not-stated'));
  const reply = from.all.find((p) => p.plan.title === plan.title);
  if (reply === undefined || reply.partial) return none(term('lesson.plan-not-whole'));
  const work = lineOf(block, exerciseProperties.workOut);
  if (work)
    return figureAnswer(reply.analysis, work.on.text, work.figure.text, contactOf(work.contact?.expression));
  const find = lineOf(block, exerciseProperties.find);
  if (find) return faultAnswer(reply.analysis, find.on?.text);
  const finish = lineOf(block, exerciseProperties.finish);
  if (finish) return finishAnswer(plan, reply, finish.on.text, finish.leaveOut?.text, from.text);
  return none(term('lesson.asks-nothing'));
}

const none = (why: Message): Answer => ({ kind: 'none', why });

const contactOf = (expression: { readonly kind: string } | undefined): number | undefined =>
  expression !== undefined && 'value' in expression && typeof expression.value === 'number'
    ? expression.value
    : undefined;

/** `height limit` is kept as `heightLimit`. */
const keyOf = (words: string): string => words.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());

function figureAnswer(analysis: Analysis, name: string, words: string, contact: number | undefined): Answer {
  const support = analysis.supports.find((s) => s.name === name);
  if (support === undefined) return none(message('lesson.no-support', { on: nameHole(name) }));
  const at = support.contacts.find((c) => c.number === contact);
  const key = keyOf(words);
  const ofContact =
    key === 'load' ? at?.load : key === 'capacity' ? at?.capacity : key === 'use' ? at?.use : undefined;
  const figure = contact === undefined ? support.figures[key] : ofContact;
  if (figure === undefined)
    return none(message('lesson.no-figure', { figure: nameHole(words), on: nameHole(name) }));
  if (figure.value === undefined)
    return none(message('lesson.not-known', { figure: nameHole(words), on: nameHole(name) }));
  return { kind: 'figure', figure };
}

function faultAnswer(analysis: Analysis, on: string | undefined): Answer {
  const faults = analysis.findings.filter(
    (f) => !f.couldNotRun && f.severity !== 'note' && f.rule !== 'expectation-unmet',
  );
  const findings = faults.filter((f) => on === undefined || f.subject.element.split('/').at(-1) === on);
  return findings.length === 0 ? none(term('lesson.no-fault')) : { kind: 'faults', findings };
}

/** The fix that the checks work out, else the line as it is written. */
function finishAnswer(
  plan: BoundBlock,
  { analysis }: PlanReply,
  name: string,
  leaveOut: string | undefined,
  text: string,
): Answer {
  const subject = plan.blocks.find((b) => b.name === name);
  const fixes = analysis.findings
    .filter((f) => f.subject.element === subject?.elementId)
    .flatMap((f) => f.fixes)
    .filter((fix) => fix.edits.some((e) => e.kind === 'set' && e.at.property === leaveOut));
  const fixed = fixes[0]?.title;
  const written = subject?.properties.find((p) => p.key === leaveOut);
  const key =
    fixed ?? (written === undefined ? undefined : nameHole(text.slice(written.span.start, written.span.end)));
  return key === undefined
    ? none(message('lesson.no-line', { on: nameHole(name), line: nameHole(leaveOut ?? '') }))
    : { kind: 'finish', subject: name, leaveOut, key };
}

export type Answer =
  | { readonly kind: 'figure'; readonly figure: Figure }
  | { readonly kind: 'faults'; readonly findings: readonly Finding[] }
  /** The support as written holds: its own line is the key. */
  | {
      readonly kind: 'finish';
      readonly subject: string;
      readonly leaveOut: string | undefined;
      readonly key: Message | Name;
    }
  /** The key could not be worked out. Says why; never left blank. */
  | { readonly kind: 'none'; readonly why: Message };

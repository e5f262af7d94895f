import type { Analysis, Finding } from '@cribwright/engine';
import type { BoundBlock } from '@cribwright/language';
import { exerciseProperties, figureKey } from '@cribwright/language/internal';
import type { Figure } from '@cribwright/messages';
import { type Message, message, type Name, name as nameHole, term } from '@cribwright/messages';
import type { PlanReply } from '../reply/plan-reply.js';
import { figureWords, thingWords } from './asked-words.js';
import { contactNumber } from './contact-number.js';
import type { ExercisePlan } from './exercise-plan.js';
import { lineOf } from './line-of.js';

/**
 * The key of an exercise, calculated from the plan it is about.
 *
 * @param text the text of the file that holds it
 */
export function answerTo(block: BoundBlock, about: ExercisePlan | undefined, text: string): Answer {
  if (about === undefined) return none(term('lesson.plan-not-stated'));
  if (about.reply === undefined) return none(term('lesson.plan-not-whole'));
  const { analysis } = about.reply;
  const work = lineOf(block, exerciseProperties.workOut);
  if (work)
    return figureAnswer(
      analysis,
      { own: work.on.text, words: thingWords(work.on.text, about) },
      work.figure.text,
      contactNumber(work.contact?.expression),
    );
  const find = lineOf(block, exerciseProperties.find);
  if (find) return faultAnswer(analysis, find.on?.text);
  const finish = lineOf(block, exerciseProperties.finish);
  if (finish) return finishAnswer(about.block, about.reply, finish.on.text, finish.leaveOut?.text, text);
  return none(term('lesson.asks-nothing'));
}

const none = (why: Message): Answer => ({ kind: 'none', why });

function figureAnswer(
  analysis: Analysis,
  on: { readonly own: string; readonly words: Message | Name },
  figureName: string,
  contact: number | undefined,
): Answer {
  const support = analysis.supports.find((s) => s.name === on.own);
  if (support === undefined) return none(message('lesson.no-support', { on: on.words }));
  const at = support.contacts.find((c) => c.number === contact);
  const key = figureKey(figureName);
  const ofContact =
    key === 'load' ? at?.load : key === 'capacity' ? at?.capacity : key === 'use' ? at?.use : undefined;
  const figure = contact === undefined ? support.figures[key] : ofContact;
  const asked = { figure: figureWords(figureName), on: on.words };
  if (figure === undefined) return none(message('lesson.no-figure', asked));
  if (figure.value === undefined) return none(message('lesson.not-known', asked));
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

/** The key of an exercise, as it was worked out from its plan. */
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

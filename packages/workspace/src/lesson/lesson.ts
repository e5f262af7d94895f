import type { BoundBlock, BoundFile } from '@cribwright/language';
import { lessonProperties } from '@cribwright/language/internal';
import { count, type Message, message, type Name, name } from '@cribwright/messages';
import type { PlanReply } from '../reply/plan-reply.js';
import type { Answer } from './answer.js';
import { answerTo } from './answer.js';
import { exercisePlan } from './exercise-plan.js';
import { exerciseText } from './exercise-text.js';
import { lineOf, linesOf } from './line-of.js';

/** A lesson with its exercises and their keys. Every key is worked out from the plan, none is typed. */
export interface Lesson {
  readonly title: string;
  readonly about: string | undefined;
  /** Paragraphs of the handout. */
  readonly paragraphs: readonly string[];
  readonly plans: readonly PlanReply[];
  readonly exercises: readonly Exercise[];
}

/** One exercise of a lesson, with its key. */
export interface Exercise {
  readonly name: Message | Name;
  /** The plan it is about, where that could be read. Its units are those of the answer. */
  readonly plan: PlanReply | undefined;
  readonly ask: Message | Name;
  readonly hints: readonly string[];
  /** How many points it is worth. `undefined` where the lesson does not say. */
  readonly points: number | undefined;
  readonly answer: Answer;
}

/** The lessons that a file holds. `plans` are those of the file, as checked. */
export const lessonsIn = (file: BoundFile, plans: readonly PlanReply[]): readonly Lesson[] =>
  file.blocks.filter((b) => b.schema.keyword === 'lesson').map((b) => lesson(b, file, plans));

function lesson(block: BoundBlock, file: BoundFile, all: readonly PlanReply[]): Lesson {
  const own = block.blocks.filter((b) => b.schema.keyword === 'plan');
  const plans = own.flatMap((b) => all.find((p) => p.plan.title === b.title) ?? []);
  return {
    title: block.title ?? '',
    about: lineOf(block, lessonProperties.about)?.about.text,
    paragraphs: linesOf(block, lessonProperties.read).map((l) => l.read.text),
    plans,
    exercises: block.blocks
      .filter((b) => b.schema.keyword === 'exercise')
      .map((b, i) => exercise(b, i, own, { text: file.text, all })),
  };
}

function exercise(
  block: BoundBlock,
  index: number,
  plans: readonly BoundBlock[],
  from: { readonly text: string; readonly all: readonly PlanReply[] },
): Exercise {
  const own = block.title ?? block.name;
  const about = exercisePlan(block, plans, from.all);
  return {
    name: own === undefined ? message('lesson.exercise', { number: count(index + 1) }) : name(own),
    plan: about?.reply,
    ...exerciseText(block, about),
    answer: answerTo(block, about, from.text),
  };
}

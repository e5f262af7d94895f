import { elementMessage } from '@cribwright/engine';
import { type Message, type Name, name, term } from '@cribwright/messages';
import type { ExercisePlan } from './exercise-plan.js';

const figures = {
  height: term('figure.height'),
  'height limit': term('figure.height-limit'),
  capacity: term('figure.capacity'),
  load: term('figure.load'),
  use: term('figure.use-of-capacity'),
  angle: term('figure.angle'),
  pressure: term('figure.pressure-on-the-ground'),
  width: term('lesson.width'),
  overhang: term('figure.overhang'),
  gap: term('figure.gap'),
} as const satisfies Readonly<Record<string, Message>>;

const isFigure = (words: string): words is keyof typeof figures => Object.hasOwn(figures, words);

/** A figure that a plan names, such as `height limit`, as a reader is told of it. */
export const figureWords = (words: string): Message | Name =>
  isFigure(words) ? figures[words] : name(words);

/** A thing that an exercise names, by its kind: `crib A`. Its bare name where the plan could not be read. */
export function thingWords(own: string, about: ExercisePlan | undefined): Message | Name {
  const id = about?.block.blocks.find((b) => b.name === own)?.elementId;
  return id === undefined || about?.reply === undefined ? name(own) : elementMessage(about.reply.plan, id);
}

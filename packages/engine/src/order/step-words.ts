import { list, type Message, message, term } from '@cribwright/messages';
import type { ElementId, Plan, Step, StepAction } from '@cribwright/model';
import { elementMessage } from '../element/element-message.js';

const actions: Readonly<Record<StepAction, Message>> = {
  'size up': term('step.size-up'),
  chock: term('step.chock'),
  capture: term('step.capture'),
  build: term('step.build'),
  slide: term('step.slide'),
  set: term('step.set'),
  lock: term('step.lock'),
  tension: term('step.tension'),
  check: term('step.check'),
  remove: term('step.remove'),
};

/** A step as people say it: `build crib A, crib C`. */
export function stepWords(step: Step, plan: Plan): Message {
  const named = (ids: readonly ElementId[]) =>
    list(
      ids.map((id) => elementMessage(plan, id)),
      'plain',
    );
  const work = { action: actions[step.action], targets: named(step.targets) };
  if (step.with.length > 0) return message('step.work-with', { ...work, with: named(step.with) });
  return step.targets.length === 0 ? work.action : message('step.work', work);
}

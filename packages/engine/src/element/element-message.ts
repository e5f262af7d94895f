import { count, type Message, message, type Name, name } from '@cribwright/messages';
import {
  type Axle,
  byKind,
  type Chock,
  type ElementId,
  type PerSupportKind,
  type Plan,
  supportsOf,
  type Tie,
} from '@cribwright/model';

/** An element as people say it: `crib A`, `strap T1`, `the trailer`, `step 3`. An id that is in no plan as it is. */
export function elementMessage(plan: Plan, id: ElementId): Message | Name {
  const step = plan.steps.find((s) => s.id === id);
  if (step !== undefined) return message('element.step', { number: count(step.number) });
  const vehicle = plan.vehicles.find((v) => v.id === id);
  if (vehicle !== undefined) return message('element.vehicle', { name: name(vehicle.name) });
  const support = supportsOf(plan).find((s) => s.id === id);
  if (support !== undefined) return byKind(support, supportWords);
  const way = plan.egress.find((e) => e.id === id);
  return way === undefined ? name(id.replace('/', ' ')) : message('element.egress', { name: name(way.name) });
}

const ties = {
  strap: 'element.strap',
  chain: 'element.chain',
  'wire rope': 'element.wire-rope',
} as const;

/** A tie by its kind: `strap T1`, `chain C2`. */
export const tieWords = (tie: Tie): Message => message(ties[tie.gear.kind], { name: name(tie.name) });

/** A wheel chock, or the chocks that a step puts in without naming them. */
const chockWords = (chock: Chock): Message => {
  const step = /^step (.+)$/.exec(chock.name)?.[1];
  return step === undefined
    ? message('element.chock', { name: name(chock.name) })
    : message('element.chocks-of-step', { step: name(step) });
};

const supportWords: PerSupportKind<Message> = {
  crib: (crib) => message('element.crib', { name: name(crib.name) }),
  'step chock': (chock) => message('element.step-chock', { name: name(chock.name) }),
  strut: (strut) => message('element.strut', { name: name(strut.name) }),
  tie: tieWords,
  chock: chockWords,
  pad: (pad) => message('element.pad', { name: name(pad.name) }),
};

/** `axle 2`. A name of another form as it is. */
export function axleWords({ name: own }: Pick<Axle, 'name'>): Message | Name {
  const number = /^axle (.+)$/.exec(own)?.[1];
  return number === undefined ? name(own) : message('element.axle', { number: name(number) });
}

import { elementMessage } from '@cribwright/engine';
import { type Message, message, type Name, name, term } from '@cribwright/messages';
import { type Look, notChecked } from '../look/look.js';
import { remembered } from '../sharing/remembered.js';
import type { Thing } from '../space/thing.js';
import { sentences } from './sentences.js';

/** What a shape is called aloud: kind, name, size, load and use, and then what is wrong with it. */
export function nameOf(thing: Thing, look: Look): string {
  const { called, faults } = spokenOf(thing, look);
  return faults === '' ? called : `${called}. ${faults}`;
}

/** The same in two parts, for words between them. */
export const spokenOf = (thing: Thing, look: Look): Spoken =>
  // A drawing calls each of its shapes by name twice: on the shape, and in its words.
  spoken(thing, [look], () => ({ called: call(thing, look), faults: faultsOf(thing, look) }));

interface Spoken {
  /** `crib A, 38.5 in high, load 1,365 lb, may carry 24,000 lb, 5.7 % used` */
  readonly called: string;
  /** In sentences; empty where there are none. */
  readonly faults: string;
}

const spoken = remembered<Thing, Spoken>();

function call(thing: Thing, look: Look): string {
  const { say } = look;
  const parts = [
    say.message(
      thing.kind === 'vehicle'
        ? message('piece.vehicle', { name: name(thing.name) })
        : elementMessage(look.plan, thing.id),
    ),
  ];
  const figures = look.support(thing.id)?.figures ?? {};
  const told = (key: string, words: (value: Name) => Message) => {
    const figure = figures[key];
    if (figure !== undefined) parts.push(say.message(words(name(say.figure(figure)))));
  };
  told('height', (height) => message('piece.spoken-height', { height }));
  told('angle', (angle) => message('piece.spoken-angle', { angle }));
  told('load', (load) => message('piece.spoken-load', { load }));
  told('capacity', (capacity) => message('piece.spoken-capacity', { capacity }));
  told('use', (use) => message('piece.spoken-use', { use }));
  if (look.unchecked && thing.kind !== 'vehicle') parts.push(say.message(notChecked));
  const standing = look.standing(thing.id);
  if (standing === 'adding') parts.push(say.message(term('piece.being-placed')));
  if (standing === 'later') parts.push(say.message(term('piece.placed-later')));
  if (standing === 'lost') parts.push(say.message(term('piece.taken-as-lost')));
  return parts.join(', ');
}

const severities = {
  danger: 'piece.danger',
  warning: 'piece.warning',
  note: 'piece.note',
} as const;

const faultsOf = (thing: Thing, look: Look): string =>
  sentences(
    look.findingsOn(thing.id).map((finding) => {
      const own = { message: finding.message };
      return look.say.message(
        finding.accepted !== undefined
          ? message('piece.accepted', { by: name(finding.accepted.by), ...own })
          : message(finding.couldNotRun === true ? 'piece.could-not-run' : severities[finding.severity], own),
      );
    }),
  );

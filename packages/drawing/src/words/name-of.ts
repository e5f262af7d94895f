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
  const parts = [`${thing.kind} ${thing.name}`];
  const figures = look.support(thing.id)?.figures ?? {};
  const told = (key: string, words: (value: string) => string) => {
    const figure = figures[key];
    if (figure !== undefined) parts.push(words(say.figure(figure)));
  };
  told('height', (v) => `${v} high`);
  told('angle', (v) => `at ${v}`);
  told('load', (v) => `load ${v}`);
  told('capacity', (v) => `may carry ${v}`);
  told('use', (v) => (v === 'not known' ? 'use not known' : `${v} used`));
  if (look.unchecked && thing.kind !== 'vehicle') parts.push(notChecked);
  const standing = look.standing(thing.id);
  if (standing === 'adding') parts.push('being put in now');
  if (standing === 'later') parts.push('comes later');
  if (standing === 'lost') parts.push('taken as lost');
  return parts.join(', ');
}

const faultsOf = (thing: Thing, look: Look): string =>
  sentences(
    look.findingsOn(thing.id).map((finding) => {
      const start =
        finding.accepted !== undefined
          ? `Accepted by ${finding.accepted.by}`
          : finding.couldNotRun === true
            ? 'Check could not run'
            : { danger: 'Danger', warning: 'Warning', note: 'Note' }[finding.severity];
      return `${start}: ${look.say.words.message(finding.message)}`;
    }),
  );

import { remembered } from '../sharing/remembered.js';
import type { Thing } from '../space/thing.js';
import { type Look, notChecked } from '../views/look.js';

/** What a shape is called aloud: kind, name, size, load and use, and what is wrong with it. */
export function nameOf(thing: Thing, look: Look): string {
  return called(thing, [look], () => call(thing, look));
}

/** A drawing calls each of its shapes by name twice: on the shape, and in its words. */
const called = remembered<Thing, string>();

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
  for (const finding of look.findingsOn(thing.id)) {
    const start =
      finding.accepted !== undefined
        ? `accepted by ${finding.accepted.by}`
        : finding.couldNotRun === true
          ? 'check could not run'
          : finding.severity;
    parts.push(`${start}: ${finding.message.text}`);
  }
  return parts.join(', ');
}

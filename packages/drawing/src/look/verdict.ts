import type { Finding } from '@cribwright/engine';
import { message, name, type TermId, term } from '@cribwright/messages';
import type { Verdict } from '../sheet/sheet.js';
import { drawnName } from '../text/drawn-name.js';
import { moreWords } from '../text/more-words.js';
import { shortName } from '../text/short-name.js';
import type { Look } from './look.js';

/**
 * What is unsafe and what could not be checked, by name, for the head of a drawing. Where neither is found it says
 * nothing: no drawing calls a plan safe.
 */
export function verdictsOf(look: Look): readonly Verdict[] {
  // That a plan did not come out as it said it would is no fault of anything in it: what is unsafe is named itself.
  const open = look.analysis.findings.filter(
    (f) => f.accepted === undefined && f.rule !== 'expectation-unmet',
  );
  const notRun = open.filter((f) => f.couldNotRun === true);
  const unsafe = open.filter((f) => f.couldNotRun !== true && f.severity === 'danger');
  const andMore: Verdict['andMore'] = (names, more) => moreWords(names, more, look.say);
  return [
    {
      level: 'danger' as const,
      start: `${look.say.message(term('view.unsafe'))} `,
      names: named(unsafe, look),
      andMore,
    },
    {
      level: 'warning' as const,
      start: `${look.say.message(term('view.not-checked-names'))} `,
      names: named(notRun, look),
      andMore,
    },
  ].filter((v) => v.names.length > 0);
}

const named = (findings: readonly Finding[], look: Look): readonly string[] => [
  ...new Set(findings.map((f) => subjectOf(f.subject.element, look))),
];

/** What a finding may stand at that has no name of its own. */
const wholes = new Map<string, TermId>([
  ['plan', 'view.the-plan'],
  ['ground', 'view.the-ground'],
  ['steps', 'view.the-order'],
  ['size up', 'view.the-size-up'],
]);

/** An element as the plan calls it; one that is not drawn by its kind, with its number where it has one. */
function subjectOf(element: string, look: Look): string {
  const thing = look.things.find((t) => t.id === element);
  if (thing !== undefined) return shortName(drawnName(thing.name, look.say));
  const [kind = element, own = ''] = element.split('/');
  if (kind === 'step') return look.say.message(message('view.step', { number: name(own) }));
  const whole = wholes.get(kind);
  return whole !== undefined && own === '' ? look.say.message(term(whole)) : own === '' ? kind : own;
}

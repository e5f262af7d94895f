import { name, shown, shownAs, term } from '@cribwright/messages';
import { inch } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { measured } from '../../figure/compute.js';
import { length } from '../../figure/units-of.js';
import type { Fix } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import { type Contact, covers, type Met } from '../../placed/contacts.js';
import { placeAt } from '../../placed/part-place.js';
import { placeText } from '../../vehicle/place-words.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  misses:
    'Crib {crib} contact {contact} misses the {part}: the nearest is {off} away, and {reach} counts as under it. {advice}',
  'no-such-part': 'Crib {crib} is to capture {part}, and the {vehicle} has no such part.',
  nothing: 'Crib {crib} captures nothing. Say what its top meets.',
  'to-meet': 'It is to meet the {part}.',
  'move-it': 'Move the crib to {place}.',
  'look-again': 'No place near here puts every contact under its part. Look at another layout.',
  'fix-move': 'Move the crib to {place}',
} as const;
const say = messages('joist-miss', words);

function misses(c: CribWorking, w: Workings): readonly RuleFinding[] {
  const { crib } = c;
  const subject = { element: crib.id };
  if (crib.captures.length === 0)
    return [
      {
        subject,
        at: subject,
        message: say('nothing', { crib: crib.name }),
        figures: [],
      },
    ];
  const missed = c.contacts.flatMap((contact) => {
    const wanted = contact.given.filter((g) => g.capture.contacts !== undefined);
    const first = wanted[0];
    return contact.loaded || first === undefined ? [] : [{ contact, first }];
  });
  // A part named alone takes what it covers. It must cover something.
  const lone =
    c.loaded === 0
      ? c.contacts.flatMap((k) => (k.given[0] === undefined ? [] : [{ contact: k, first: k.given[0] }]))
      : [];
  const first = missed[0] ?? lone[0];
  if (first === undefined) return [];
  const fix = nearestFit(c, w);
  return [report(c, first.contact, first.first, w, fix)];
}

function report(c: CribWorking, contact: Contact, met: Met, w: Workings, fix: Fix | undefined): RuleFinding {
  const { crib } = c;
  const reach = w.limit('joist reach');
  const off = measured(
    length('off', term('figure.distance-to-the-nearest'), 'up'),
    exactly(Math.hypot(met.place.off.x, met.place.off.y)),
    term('figure.from-the-contact-to-the-edge-of'),
  );
  return {
    subject: { element: crib.id },
    at: { element: crib.id, property: 'at' },
    message: say('misses', {
      crib: crib.name,
      contact: `${contact.number}`,
      part: met.part.name,
      off: shown(off),
      reach: shownAs(reach, reach.value?.low ?? 0),
      advice:
        fix === undefined ? say('look-again', {}) : say('move-it', { place: fix.title.holes.place ?? '' }),
    }),
    figures: [off, reach],
    related: [{ at: met.capture.ref, message: say('to-meet', { part: met.part.name }) }],
    fixes: fix === undefined ? [] : [fix],
  };
}

/** Steps of half an inch, up to two feet: more is another plan. */
const step = 0.5 * inch;
const farthest = 48;
/** Moves tried along each axis. */
const mostTried = 12;

/**
 * Moves along one axis that are worth a try: each puts some contact right under its part, or halfway between two
 * such places, whole steps, the shortest first.
 */
function moves(off: readonly number[]): readonly number[] {
  const middles = off.flatMap((a, i) => off.slice(i + 1).map((b) => (a + b) / 2));
  const steps = [0, ...off, ...middles].map((d) => Math.round(d / step));
  return [...new Set(steps)]
    .filter((n) => Math.abs(n) <= farthest)
    .sort((a, b) => Math.abs(a) - Math.abs(b))
    .slice(0, mostTried)
    .map((n) => n * step);
}

/** The nearest place, of those worth a try, at which every contact that the plan gives a part meets it. */
function nearestFit(c: CribWorking, w: Workings): Fix | undefined {
  const found = nearestMove(c, w.limit('joist reach').value?.low ?? 0);
  if (found === undefined) return undefined;
  const at = { x: c.crib.at.x + found.dx, y: c.crib.at.y + found.dy };
  const place = placeText(at, w.plan.display);
  return {
    title: say('fix-move', { place: name(place) }),
    edits: [{ kind: 'set', at: { element: c.crib.id, property: 'at' }, text: place }],
    safe: false,
  };
}

function nearestMove({ crib, contacts }: CribWorking, reach: number) {
  // What is given to a contact stays given to it when the whole crib moves. The one that misses now is asked first.
  const given = contacts
    .filter((k) => k.given.length > 0)
    .sort((a, b) => Number(a.loaded) - Number(b.loaded));
  const meets = (k: Contact, dx: number, dy: number) =>
    k.given.some(({ vehicle, part }) => {
      const place = placeAt(vehicle, part, { x: k.x + dx, y: k.y + dy });
      return place !== undefined && covers(place, crib, reach);
    });
  const along = moves(given.flatMap((k) => k.given.map((g) => g.place.at.x - k.x)));
  const across = moves(given.flatMap((k) => k.given.map((g) => g.place.at.y - k.y)));
  let best: { readonly dx: number; readonly dy: number } | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const dx of along)
    for (const dy of across) {
      const far = Math.hypot(dx, dy);
      // The moves across come shortest first: the rest of them are no nearer.
      if (far >= least) break;
      if (!given.every((k) => meets(k, dx, dy))) continue;
      best = { dx, dy };
      least = far;
    }
  return best;
}

export const rule: Rule = {
  id: 'joist-miss',
  title: 'Contact beside the part it should meet',
  family: 'timber and cribs',
  severity: 'danger',
  protects:
    'A contact that stands between two joists meets only sheet metal or flooring and carries nothing.',
  sources: [practice],
  compares: ['off', 'joist reach'],
  words,
  check: (w) => w.cribs().flatMap((c) => misses(c, w)),
};

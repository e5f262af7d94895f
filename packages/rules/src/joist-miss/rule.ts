import type { Fix, Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { captureFixes, placeText } from '@cribwright/engine/internal';
import { count, type Message, message, name, quantity, shown, shownAs, term } from '@cribwright/messages';
import type { Contact, Met, PlanPoint } from '@cribwright/model';
import { exactly, measured } from '@cribwright/model';
import { covers, length, placeAt } from '@cribwright/model/internal';
import { inch } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function misses(c: CribWorking, w: Workings): readonly RuleFinding[] {
  const { crib } = c;
  const subject = { element: crib.id };
  if (crib.captures.length === 0)
    return [
      {
        subject,
        at: subject,
        message: message('joist-miss.nothing', { crib: name(crib.name) }),
        figures: [],
        fixes: captureFixes(crib, w),
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
  return [report(c, first.contact, first.first, w, nearestFit(c, w))];
}

function report(c: CribWorking, contact: Contact, met: Met, w: Workings, fit: Fit | undefined): RuleFinding {
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
    message: message('joist-miss.misses', {
      crib: name(crib.name),
      contact: count(contact.number),
      part: name(met.part.name),
      off: shown(off),
      reach: shownAs(reach, reach.value?.low ?? 0),
      advice:
        fit === undefined
          ? term('joist-miss.look-again')
          : message('joist-miss.move-it', { place: fit.place }),
    }),
    figures: [off, reach],
    related: [{ at: met.capture.ref, message: message('joist-miss.to-meet', { part: name(met.part.name) }) }],
    fixes: fit === undefined ? captureFixes(crib, w) : [fit.fix],
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

/** A place that fits, and the fix that moves the crib there. */
interface Fit {
  readonly place: Message;
  readonly fix: Fix;
}

/** The nearest place, of those worth a try, at which every contact that the plan gives a part meets it. */
function nearestFit(c: CribWorking, w: Workings): Fit | undefined {
  const found = nearestMove(c, w.limit('joist reach').value?.low ?? 0);
  if (found === undefined) return undefined;
  const at = { x: c.crib.at.x + found.dx, y: c.crib.at.y + found.dy };
  const text = placeText(at, w.plan.display);
  return {
    place: placeMessage(at),
    fix: {
      title: message('remedy.move', { support: elementMessage(w.plan, c.crib.id), place: name(text) }),
      edits: [{ kind: 'place', at: { element: c.crib.id, property: 'at' }, from: c.crib.at, to: at, text }],
      safe: false,
    },
  };
}

function placeMessage({ x, y }: PlanPoint): Message {
  const back = quantity('place', x, 'nearest');
  if (Math.abs(y) < 0.001) return message('joist-miss.at-center', { back });
  return message(y < 0 ? 'joist-miss.at-driver-side' : 'joist-miss.at-passenger-side', {
    back,
    off: quantity('place', Math.abs(y), 'nearest'),
  });
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
  title: term('joist-miss.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'contact',
  protects: term('joist-miss.protects'),
  sources: [practice],
  compares: ['off', 'joist reach'],
  check: (w) => w.cribs().flatMap((c) => misses(c, w)),
};

import { message, shownBeside, name as verbatim } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { given } from '../../figure/compute.js';
import { force } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import type { Tie } from '../../model/support.js';
import { partNamed } from '../../placed/part-place.js';
import type { PlacedTie } from '../../placed/place-tie.js';
import { tieUse } from '../../strut/tie-use.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'holds-unknown':
    '{tie} is anchored to {anchor}, and nobody knows what that holds. Until then this check has not passed. Write `holds` with what it is good for, or tie base to base.',
  'holds-less': '{tie} may pull {load}, and {anchor} holds {holds}. Find a better anchor.',
  moves: '{tie} is anchored to the {part} of the {vehicle}, which moves. Anchor it to the frame.',
  'no-part': '{tie} is anchored to the {part}, and the {vehicle} has no such part.',
  'not-there': '{tie} is anchored to something that is not in this plan.',
  'same-end': '{tie} has both ends at the same place. It holds nothing.',
} as const;
const say = messages('tie-anchor', words);

const nameOf = (tie: Tie) => `${tie.gear.kind} ${tie.name}`;

function badEnd(placed: PlacedTie, which: 'from' | 'to', w: Workings): RuleFinding | undefined {
  const { tie } = placed;
  const end = tie[which];
  const subject = { element: tie.id };
  const at = { element: tie.id, property: which };
  const name = nameOf(tie);
  if (placed[which] === undefined) return { subject, at, message: say('not-there', { tie: name }) };
  if (end.kind === 'vehicle part') {
    const vehicle = w.vehicles.get(end.vehicle);
    const part = vehicle === undefined ? undefined : partNamed(vehicle, end.part);
    const shared = { tie: name, part: part?.name ?? end.part, vehicle: vehicle?.name ?? end.vehicle };
    if (part === undefined) return { subject, at, message: say('no-part', shared) };
    return part.moves ? { subject, at, message: say('moves', shared) } : undefined;
  }
  if (end.kind !== 'ground anchor') return undefined;
  if (end.holds === undefined)
    return {
      subject,
      at,
      severity: 'warning',
      couldNotRun: true,
      message: say('holds-unknown', { tie: name, anchor: end.name }),
    };
  const working = w.ties().find((t) => t.tie.id === tie.id);
  const load = working === undefined ? undefined : tieUse(working, w).load;
  if (load?.value === undefined || !exceeds(load.value.high, end.holds)) return undefined;
  const holds = given(
    force('holds', message('figure.what-it-holds', { anchor: verbatim(end.name) }), 'down'),
    exactly(end.holds),
    {
      kind: 'stated',
    },
  );
  const beside = shownBeside(load, holds);
  return {
    subject,
    at,
    message: say('holds-less', { tie: name, anchor: end.name, load: beside.demand, holds: beside.limit }),
    figures: [load, holds],
  };
}

function badTie(placed: PlacedTie, w: Workings): readonly RuleFinding[] {
  const { tie, length } = placed;
  if (length !== undefined && length < 0.01)
    return [
      {
        subject: { element: tie.id },
        at: { element: tie.id },
        message: say('same-end', { tie: nameOf(tie) }),
      },
    ];
  return [badEnd(placed, 'from', w) ?? [], badEnd(placed, 'to', w) ?? []].flat();
}

export const rule: Rule = {
  id: 'tie-anchor',
  title: 'Strap or chain anchored to something that may not hold',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A strap is as good as what it is anchored to.',
  sources: [practice],
  compares: ['load', 'holds'],
  words,
  check: (w) => w.placed.ties.all.flatMap((t) => badTie(t, w)),
};

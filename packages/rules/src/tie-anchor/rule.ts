import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { tieUse } from '@cribwright/engine/internal';
import { message, name, shownBeside, term } from '@cribwright/messages';
import type { PlacedTie } from '@cribwright/model';
import { exactly, given, partNamed } from '@cribwright/model';
import { force } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function badEnd(placed: PlacedTie, which: 'from' | 'to', w: Workings): RuleFinding | undefined {
  const { tie } = placed;
  const end = tie[which];
  const subject = { element: tie.id };
  const at = { element: tie.id, property: which };
  const words = elementMessage(w.plan, tie.id);
  if (placed[which] === undefined)
    return { subject, at, message: message('tie-anchor.not-there', { tie: words }) };
  if (end.kind === 'vehicle part') {
    const vehicle = w.vehicles.get(end.vehicle);
    const part = vehicle === undefined ? undefined : partNamed(vehicle, end.part);
    const shared = {
      tie: words,
      part: name(part?.name ?? end.part),
      vehicle: name(vehicle?.name ?? end.vehicle),
    };
    if (part === undefined) return { subject, at, message: message('tie-anchor.no-part', shared) };
    return part.moves ? { subject, at, message: message('tie-anchor.moves', shared) } : undefined;
  }
  if (end.kind !== 'ground anchor') return undefined;
  if (end.holds === undefined)
    return {
      subject,
      at,
      severity: 'warning',
      couldNotRun: true,
      message: message('tie-anchor.holds-unknown', { tie: words, anchor: name(end.name) }),
    };
  const working = w.ties().find((t) => t.tie.id === tie.id);
  const load = working === undefined ? undefined : tieUse(working, w).load;
  if (load?.value === undefined || !exceeds(load.value.high, end.holds)) return undefined;
  const holds = given(
    force('holds', message('figure.what-it-holds', { anchor: name(end.name) }), 'down'),
    exactly(end.holds),
    {
      kind: 'stated',
    },
  );
  const beside = shownBeside(load, holds);
  return {
    subject,
    at,
    message: message('tie-anchor.holds-less', {
      tie: words,
      anchor: name(end.name),
      load: beside.demand,
      holds: beside.limit,
    }),
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
        message: message('tie-anchor.same-end', { tie: elementMessage(w.plan, tie.id) }),
      },
    ];
  return [badEnd(placed, 'from', w) ?? [], badEnd(placed, 'to', w) ?? []].flat();
}

export const rule: Rule = {
  id: 'tie-anchor',
  title: term('tie-anchor.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'plan',
  protects: term('tie-anchor.protects'),
  sources: [practice],
  compares: ['load', 'holds'],
  check: (w) => w.placed.ties.all.flatMap((t) => badTie(t, w)),
};

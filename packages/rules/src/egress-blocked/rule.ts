import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { overlap } from '@cribwright/engine/internal';
import { message, name, shownBeside, term } from '@cribwright/messages';
import type { Egress, ElementId, PlacedPlan, SupportKind } from '@cribwright/model';
import { band, type Extent, exactly, given, type Outline } from '@cribwright/model';
import { length } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** What stands higher than this at a person's path cannot be stepped over, m. */
const stepOver = 0.15;
/** And what hangs lower than this cannot be passed under, m. */
const headroom = 1.8;

const inPath = ({ low, high }: Extent) => high > stepOver && low < headroom;

const pathOf = (way: Egress): readonly Outline[] =>
  way.points.slice(1).flatMap((to, i) => {
    const from = way.points[i];
    return from === undefined ? [] : [band(from, to, way.width)];
  });

/** What supports of each kind take up. Struts and ties as thin bands, as high as they reach. */
const extents: Readonly<Record<SupportKind, (placed: PlacedPlan) => readonly Extent[]>> = {
  crib: ({ cribs }) => cribs.all.map((c) => c.extent),
  'step chock': ({ stepChocks }) => stepChocks.all.map((c) => c.extent),
  strut: ({ struts }) =>
    struts.all.map(({ extent }) => ({ ...extent, high: Math.max(stepOver * 2, extent.high) })),
  tie: ({ ties }) =>
    ties.all.flatMap(({ tie, from, to }) =>
      from === undefined || to === undefined
        ? []
        : [{ element: tie.id, outline: band(from, to, 0.05), low: 0, high: stepOver * 2 }],
    ),
  // It lies against a wheel, within the outline of its vehicle.
  chock: () => [],
  pad: ({ pads }) => pads.all.flatMap((p) => p.extent ?? []),
};

function check(w: Workings): readonly RuleFinding[] {
  const { plan, placed } = w;
  const supports = plan.cribs.length + plan.stepChocks.length + plan.struts.length;
  if (plan.egress.length === 0)
    return supports === 0
      ? []
      : [{ subject: plan.ref, at: plan.ref, severity: 'note', message: term('egress-blocked.none') }];
  const solids = [
    ...Object.values(extents).flatMap((of) => of(placed)),
    ...placed.vehicles.all.filter((v) => v.given.position.kind === 'upright').map((v) => v.extent),
  ].filter(inPath);
  return plan.egress.flatMap((way) => [...blocked(way, solids, w), ...narrow(way, w)]);
}

function blocked(way: Egress, solids: readonly Extent[], w: Workings): readonly RuleFinding[] {
  const path = pathOf(way);
  const hit = new Set<ElementId>(
    solids.filter((s) => path.some((p) => overlap(p, s.outline) > 0)).map((s) => s.element),
  );
  return [...hit].map((id) => ({
    subject: { element: way.id },
    at: way.ref,
    message: message(id.startsWith('tie/') ? 'egress-blocked.across' : 'egress-blocked.blocked', {
      way: name(way.name),
      what: elementMessage(w.plan, id),
    }),
    related: [{ at: { element: id }, message: term('egress-blocked.in-the-way') }],
  }));
}

function narrow(way: Egress, w: Workings): readonly RuleFinding[] {
  const least = w.limit('egress width');
  const at = { element: way.id, property: 'width' };
  const width = given(
    length('width', term('figure.width-of-the-way-out'), 'down', { ref: at }),
    exactly(way.width),
    {
      kind: 'stated',
    },
  );
  if (!exceeds(least.value?.high ?? 0, way.width)) return [];
  const beside = shownBeside(width, least, 'least');
  return [
    {
      subject: { element: way.id },
      at,
      severity: 'warning',
      message: message('egress-blocked.narrow', {
        way: name(way.name),
        width: beside.demand,
        least: beside.limit,
      }),
      figures: [width, least],
      related: [],
    },
  ];
}

export const rule: Rule = {
  id: 'egress-blocked',
  title: term('egress-blocked.title'),
  family: 'order and crew',
  severity: 'danger',
  judges: 'plan',
  protects: term('egress-blocked.protects'),
  sources: [practice],
  compares: ['width', 'egress width'],
  check,
};

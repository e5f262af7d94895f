import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { clash, lengthInside, moveClearFix, nearPairs } from '@cribwright/engine/internal';
import { message, shown, term } from '@cribwright/messages';
import type { ElementId, Extent, PlacedPlan, SupportKind } from '@cribwright/model';
import { exactly, measured } from '@cribwright/model';
import { length } from '@cribwright/model/internal';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';
import { vehiclesClash } from './vehicles-clash.js';

type Key = 'two-supports' | 'body' | 'wheels';

function report(key: Key, first: ElementId, second: ElementId, depth: number, w: Workings): RuleFinding {
  const figure = measured(
    length('depth', term('figure.overlap'), 'up'),
    exactly(depth),
    term('figure.seen-from-above'),
  );
  return {
    subject: { element: first },
    at: { element: first, property: 'at' },
    message: message(`crib-clash.${key}`, {
      first: elementMessage(w.plan, first),
      second: elementMessage(w.plan, second),
      depth: shown(figure),
    }),
    figures: [figure],
    related: [{ at: { element: second }, message: term('crib-clash.other-here') }],
    fixes: w.plan.cribs
      .filter((c) => c.id === first || c.id === second)
      .flatMap((crib) => moveClearFix(crib, w)),
  };
}

/** What takes up its place alone. A strut is a line, and is looked at by itself; a tie goes around; a pad lies beneath. */
const solidSupports: Readonly<Record<SupportKind, (placed: PlacedPlan) => readonly Extent[]>> = {
  crib: ({ cribs }) => cribs.all.map((c) => c.extent),
  'step chock': ({ stepChocks }) => stepChocks.all.map((c) => c.extent),
  strut: () => [],
  tie: () => [],
  chock: () => [],
  pad: () => [],
};

/** Pairs of cribs and step chocks. */
const supports = (w: Workings, solids: readonly Extent[]): readonly RuleFinding[] =>
  nearPairs(solids.map((s) => s.outline)).flatMap(([i, j]) => {
    const [a, b] = [solids[i], solids[j]];
    const depth = a === undefined || b === undefined ? 0 : clash(a, b);
    return a !== undefined && b !== undefined && depth > 0
      ? [report('two-supports', a.element, b.element, depth, w)]
      : [];
  });

/** Cribs against the bodies that they neither hold nor stand on, and against every wheel. */
function vehicles(w: Workings, cribs: readonly Extent[]): readonly RuleFinding[] {
  const upright = w.placed.vehicles.all.filter((v) => v.given.position.kind === 'upright');
  return w.cribs().flatMap(({ crib }, i) => {
    const solid = cribs[i];
    if (solid === undefined) return [];
    const own = new Set<ElementId>([
      ...crib.captures.map((k) => k.vehicle),
      ...(crib.standsOn.kind === 'vehicle' ? [crib.standsOn.vehicle] : []),
    ]);
    return upright.flatMap(({ given: { id }, extent, wheels }) => {
      const inBody = own.has(id) ? 0 : clash(solid, extent);
      if (inBody > 0) return [report('body', crib.id, id, inBody, w)];
      // What stands on a frame is above the wheels' track, between them.
      if (crib.standsOn.kind === 'vehicle') return [];
      const inWheel = Math.max(0, ...wheels.map((wheel) => clash(solid, wheel.extent)));
      return inWheel > 0 ? [report('wheels', crib.id, id, inWheel, w)] : [];
    });
  });
}

/** A strut leans outward: it may not go through a crib on its way. */
function struts(w: Workings, cribs: readonly Extent[]): readonly RuleFinding[] {
  return w.placed.struts.all.flatMap(({ strut: { id }, head, foot }) =>
    cribs
      .filter((solid) => lengthInside(foot, head, solid) > 0.02)
      .map(({ element }) => ({
        subject: { element: id },
        at: { element: id, property: 'head' },
        message: message('crib-clash.strut-through', {
          first: elementMessage(w.plan, id),
          second: elementMessage(w.plan, element),
        }),
        related: [{ at: { element }, message: term('crib-clash.other-here') }],
      })),
  );
}

function check(w: Workings): readonly RuleFinding[] {
  const cribs = w.placed.cribs.all.map((c) => c.extent);
  return [
    ...supports(
      w,
      Object.values(solidSupports).flatMap((of) => of(w.placed)),
    ),
    ...vehicles(w, cribs),
    ...struts(w, cribs),
    ...vehiclesClash(w),
  ];
}

export const rule: Rule = {
  id: 'crib-clash',
  title: term('crib-clash.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'plan',
  protects: term('crib-clash.protects'),
  sources: [practice],
  compares: ['depth'],
  check,
};

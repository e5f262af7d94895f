import type { GroundResult, Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { fromMemory, practice, published, type Rule, type RuleFinding } from '../definition/rule.js';
import { edgePressed, padUnstated } from './pad-and-edge.js';
import { padFix } from './pad-fix.js';

function judge(g: GroundResult, w: Workings): RuleFinding | undefined {
  const { surface } = w.plan.ground;
  const support = elementMessage(w.plan, g.element);
  const subject = { element: g.element };
  const figures = [
    g.pressure,
    g.allowable,
    g.area,
    g.bearing,
    g.edge,
    ...(g.padNeeded === undefined ? [] : [g.padNeeded]),
  ];
  const base = { subject, at: subject, figures };
  // Without a load there is nothing to compare; the load's own rule says that it is not known.
  if (g.load.value === undefined || g.load.value.high <= 0) return undefined;
  if (g.allowable.value === undefined)
    return {
      ...base,
      at: w.plan.ground.ref,
      severity: 'warning',
      couldNotRun: true,
      message: message('ground-bearing.surface-unknown', { support, surface: name(surface.name) }),
    };
  const pad = g.padNeeded === undefined ? undefined : shown(g.padNeeded);
  if (g.pressure.value === undefined)
    return {
      ...base,
      severity: 'warning',
      couldNotRun: true,
      message: message('ground-bearing.foot-unknown', {
        support,
        surface: name(surface.name),
        advice:
          pad === undefined
            ? term('ground-bearing.state-size')
            : message('ground-bearing.state-size-or-use-pad', { pad }),
      }),
      fixes: padFix(g, w),
    };
  if (!exceeds(g.pressure.value.high, g.allowable.value.low)) return edgePressed(g, w);
  // A pad of unknown material: the whole of it would do, what stands on it alone does not.
  if (!exceeds(g.pressure.value.low, g.allowable.value.low)) return padUnstated(g, w);
  const beside = shownBeside(g.pressure, g.allowable);
  return {
    ...base,
    message: message('ground-bearing.too-much', {
      support,
      surface: name(surface.name),
      pressure: beside.demand,
      allowable: beside.limit,
      sum: calculation(g.pressure),
      ...(pad === undefined ? {} : { advice: message('ground-bearing.use-pad', { pad }) }),
    }),
    related: [{ at: surface.ref, message: term('ground-bearing.surface-here') }],
    fixes: padFix(g, w),
    ...(g.load.governs === undefined ? {} : { governs: g.load.governs }),
  };
}

export const rule: Rule = {
  id: 'ground-bearing',
  title: term('ground-bearing.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('ground-bearing.protects'),
  sources: [
    practice,
    published('International Building Code 2012', 'Table 1806.2'),
    published('24 CFR 3285.202', 'table of soil classes'),
    fromMemory('NAVFAC DM-7.02, chapter 4: effective width under an eccentric load'),
    published('D. Duerr, Effective Bearing Length of Crane Mats', 'equations 1 to 8'),
  ],
  compares: ['pressure', 'edge', 'allowable'],
  check: (w) => w.ground().flatMap((g) => judge(g, w) ?? []),
};

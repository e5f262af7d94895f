import type { Fix, GroundResult, Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { padSpread, sizeText } from '@cribwright/engine/internal';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds, inch, showPair } from '@cribwright/units';
import { fromMemory, practice, published, type Rule, type RuleFinding } from '../definition/rule.js';
import { edgePressed, padUnstated } from './pad-and-edge.js';

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

/** kg/m³: timber that is wet, from memory; steel from memory. */
const density = { timber: 640, steel: 7850 } as const;
/** The heaviest pad that is offered, kg: 100 lb for each of four people, common practice, no source. */
const heaviest = 181;

/**
 * A pad of timbers that would do, or of steel where timbers do not reach that far: the thinnest that carries its own
 * overhang, and no heavier than a crew lifts. Its sides are rounded up to the next 6 in or 100 mm.
 */
function padFix(g: GroundResult, w: Workings): readonly Fix[] {
  const needed = g.padNeeded?.value?.high;
  const pressure = g.load.value;
  if (needed === undefined || pressure === undefined || w.plan.pads.some((p) => p.under === g.element))
    return [];
  const us = w.plan.display === 'us';
  const module = us ? 6 * inch : 0.1;
  const up = (side: number) => Math.ceil(side / module - 1e-9) * module;
  const foot = g.footprint;
  const least = { lengthwise: up(foot.lengthwise), crosswise: up(foot.crosswise) };
  const square = up(Math.sqrt(needed));
  const tries = [
    ...[3.5, 5.5].map((t) => ({
      material: 'timber' as const,
      thickness: t * inch,
      length: Math.max(least.lengthwise, up(needed / Math.max(foot.crosswise, inch))),
      width: least.crosswise,
    })),
    ...[0.5, 1, 1.5].map((t) => ({
      material: 'steel' as const,
      thickness: t * inch,
      length: Math.max(least.lengthwise, square),
      width: Math.max(least.crosswise, square),
    })),
  ];
  const fits = tries.find((t) => {
    if (t.length * t.width * t.thickness * density[t.material] > heaviest) return false;
    const pad = { kind: 'pad', id: '', name: '', under: g.element, ref: { element: '' }, ...t } as const;
    return (padSpread(pad, foot, g.allowable).area.value?.low ?? 0) >= needed - 1e-9;
  });
  if (fits === undefined) return [];
  const unit = us ? 'in' : 'mm';
  const size = (v: number) => showPair(v, v, 'length', unit).value;
  const shown = `${size(fits.length)} by ${size(fits.width)}`;
  const names = new Set(w.plan.pads.map((p) => p.name));
  let number = w.plan.pads.length + 1;
  while (names.has(`P${number}`)) number++;
  const under = g.element.split('/')[1] ?? g.element;
  return [
    {
      title: message('ground-bearing.fix-pad', { size: name(shown) }),
      edits: [
        {
          kind: 'insert',
          into: w.plan.ref,
          text: `pad P${number} {\n  size ${shown}\n  thickness ${sizeText(fits.thickness, w.plan.display, 'down')}\n  material ${fits.material}\n  under ${under}\n}`,
        },
      ],
      safe: false,
    },
  ];
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

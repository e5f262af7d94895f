import type { Fix, GroundResult, Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds, inch, showPair } from '@cribwright/units';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

function judge(g: GroundResult, w: Workings): RuleFinding | undefined {
  const { surface } = w.plan.ground;
  const support = elementMessage(w.plan, g.element);
  const subject = { element: g.element };
  const figures = [g.pressure, g.allowable, g.area, ...(g.padNeeded === undefined ? [] : [g.padNeeded])];
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
  if (!exceeds(g.pressure.value.high, g.allowable.value.low)) return undefined;
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

/** A square pad, its side rounded up to the next 6 in or 100 mm. */
function padFix(g: GroundResult, w: Workings): readonly Fix[] {
  const needed = g.padNeeded?.value?.high;
  if (needed === undefined || w.plan.pads.some((p) => p.under === g.element)) return [];
  const us = w.plan.display === 'us';
  const module = us ? 6 * inch : 0.1;
  const side = Math.ceil(Math.sqrt(needed) / module - 1e-9) * module;
  const text = showPair(side, side, 'length', us ? 'in' : 'mm').value;
  const names = new Set(w.plan.pads.map((p) => p.name));
  let number = w.plan.pads.length + 1;
  while (names.has(`P${number}`)) number++;
  const under = g.element.split('/')[1] ?? g.element;
  return [
    {
      title: message('ground-bearing.fix-pad', { size: name(`${text} by ${text}`) }),
      edits: [
        {
          kind: 'insert',
          into: w.plan.ref,
          text: `pad P${number} {\n  size ${text} by ${text}\n  thickness ${us ? '3.5 in' : '90 mm'}\n  under ${under}\n}`,
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
  protects: term('ground-bearing.protects'),
  sources: [
    practice,
    published('International Building Code 2012', 'Table 1806.2'),
    published('24 CFR 3285.202', 'table of soil classes'),
  ],
  compares: ['pressure', 'allowable'],
  check: (w) => w.ground().flatMap((g) => judge(g, w) ?? []),
};

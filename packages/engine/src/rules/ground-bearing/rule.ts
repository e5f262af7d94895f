import { calculation, shown, shownBeside, name as verbatim } from '@cribwright/messages';
import { exceeds, inch, showPair } from '@cribwright/units';
import type { GroundResult } from '../../analysis/analysis.js';
import type { Fix } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import { elementWords } from '../../workings/element-words.js';
import type { Workings } from '../../workings/workings.js';
import { practice, published, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'too-much':
    '{support} presses on the {surface} with {pressure} ({sum}). It bears {allowable}. A pad of {pad} would do.',
  'surface-unknown':
    '{support}: nobody knows what {surface} bears. Until then this check has not passed. Give the surface a bearing, or lay a pad and watch it settle.',
  'foot-unknown':
    '{support}: nothing says how large its base is, so what it does to {surface} could not be checked. Write the size of its base plate, or lay a pad of at least {pad}.',
  'fix-pad': 'Lay a pad of {size}',
  'surface-here': 'What the surface bears is set here.',
} as const;
const say = messages('ground-bearing', words);

function judge(g: GroundResult, w: Workings): RuleFinding | undefined {
  const { surface } = w.plan.ground;
  const support = elementWords(w.plan, g.element);
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
      message: say('surface-unknown', { support, surface: surface.name }),
    };
  const pad = g.padNeeded === undefined ? '' : shown(g.padNeeded);
  if (g.pressure.value === undefined)
    return {
      ...base,
      severity: 'warning',
      couldNotRun: true,
      message: say('foot-unknown', { support, surface: surface.name, pad }),
      fixes: padFix(g, w),
    };
  if (!exceeds(g.pressure.value.high, g.allowable.value.low)) return undefined;
  const beside = shownBeside(g.pressure, g.allowable);
  return {
    ...base,
    message: say('too-much', {
      support,
      surface: surface.name,
      pressure: beside.demand,
      allowable: beside.limit,
      sum: calculation(g.pressure),
      pad,
    }),
    related: [{ at: surface.ref, message: say('surface-here', {}) }],
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
  const shown = showPair(side, side, 'length', us ? 'in' : 'mm').value;
  const names = new Set(w.plan.pads.map((p) => p.name));
  let number = w.plan.pads.length + 1;
  while (names.has(`P${number}`)) number++;
  const name = g.element.split('/')[1] ?? g.element;
  return [
    {
      title: say('fix-pad', { size: verbatim(`${shown} by ${shown}`) }),
      edits: [
        {
          kind: 'insert',
          into: w.plan.ref,
          text: `pad P${number} {\n  size ${shown} by ${shown}\n  thickness ${us ? '3.5 in' : '90 mm'}\n  under ${name}\n}`,
        },
      ],
      safe: false,
    },
  ];
}

export const rule: Rule = {
  id: 'ground-bearing',
  title: 'Ground pressed harder than it bears',
  family: 'whole set-up',
  severity: 'danger',
  protects: 'A base that sinks on one side tips what stands on it.',
  sources: [
    practice,
    published('International Building Code 2012', 'Table 1806.2'),
    published('24 CFR 3285.202', 'table of soil classes'),
  ],
  compares: ['pressure', 'allowable'],
  words,
  check: (w) => w.ground().flatMap((g) => judge(g, w) ?? []),
};

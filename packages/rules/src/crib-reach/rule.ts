import type { Fix, Workings } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { fitAdvice, fitOf, fixTo, packingLimits, sizeText } from '@cribwright/engine/internal';
import { calculation, count, type Message, message, name, shown, shownAs, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';
import { stepMisfit } from './step-chock.js';

/** Least and most that the wedges can fill. Without wedges the stack must meet the part by itself. */
const wedgeRange = (c: CribWorking) => c.closes.value ?? { low: 0, high: 0 };

function misfit(c: CribWorking, w: Workings): RuleFinding | undefined {
  const met = c.contacts.flatMap((k) => k.meets ?? k.given[0] ?? [])[0];
  if (met === undefined) return undefined;
  const { crib, gap } = c;
  const shared = {
    crib: name(crib.name),
    vehicle: name(met.vehicle.name),
    part: name(met.part.name),
  };
  const at = { element: crib.id, property: 'courses' };
  const finding = (words: Message, fixes: readonly Fix[] = []): RuleFinding => ({
    subject: { element: crib.id },
    at,
    message: words,
    figures: [c.gap, c.closes, c.height],
    related: [],
    fixes,
    ...(gap.value !== undefined && gap.value.low !== gap.value.high
      ? { governs: term('figure.the-range-of-the-height') }
      : {}),
  });
  if (gap.value === undefined) return undefined;
  const closes = wedgeRange(c);
  const sum = calculation(gap);
  const { advice, fixes } = remedy(c, w);
  if (exceeds(0, gap.value.low + 1e-6))
    return finding(
      message('crib-reach.tall', {
        ...shared,
        over: shownAs(gap, -gap.value.low),
        sum,
        advice,
      }),
      fixes,
    );
  if (exceeds(gap.value.high, closes.high + 1e-6))
    return finding(
      message('crib-reach.short', {
        ...shared,
        gap: shownAs(gap, gap.value.high),
        sum,
        wedges:
          closes.high > 0
            ? message('crib-reach.wedges-close', { closes: shownAs(c.closes, closes.high) })
            : term('crib-reach.wedges-close-nothing'),
        advice,
      }),
      fixes,
    );
  if (exceeds(closes.low, gap.value.low + 1e-6))
    return {
      ...finding(
        message('crib-reach.loose', {
          crib: name(crib.name),
          closes: shownAs({ ...c.closes, rounding: 'up' }, closes.low),
          gap: shownAs({ ...gap, rounding: 'down' }, gap.value.low),
          sum,
          advice,
        }),
        fixes,
      ),
      severity: 'warning',
    };
  return undefined;
}

/** The number of courses that leaves a gap the wedges close; else shims on the courses there are. */
function remedy(c: CribWorking, w: Workings): { readonly advice: Message; readonly fixes: readonly Fix[] } {
  const { crib, gap } = c;
  const value = gap.value;
  const depth = crib.timber.depth;
  if (value === undefined || !(depth > 0)) return { advice: term('crib-reach.measure-first'), fixes: [] };
  const closes = wedgeRange(c);
  const more = Math.floor((value.low - closes.low) / depth + 1e-9);
  const left = {
    low: value.low - more * depth,
    high: value.high - more * depth,
  };
  const courses = crib.courses + more;
  if (courses >= 1 && more !== 0 && left.high <= closes.high + 1e-6)
    return {
      advice: message('crib-reach.use-courses', {
        courses: count(courses),
        gap: shown({ ...gap, value: left }),
      }),
      fixes: [
        {
          title: message('crib-reach.fix-courses', { courses: count(courses) }),
          edits: [
            {
              kind: 'set',
              at: { element: crib.id, property: 'courses' },
              text: `${courses}`,
            },
          ],
          safe: false,
        },
      ],
    };
  const filler = value.low - closes.low;
  const most = packingLimits(w.plan.policy);
  const packing = crib.shims + value.high;
  if (
    filler > 0 &&
    crib.shims + filler <= most.shims + 1e-6 &&
    packing <= most.packing + 1e-6 &&
    value.high - filler <= closes.high + 1e-6
  ) {
    const text = sizeText(crib.shims + filler, w.plan.display, 'down');
    const shims = name(text);
    return {
      advice: message('crib-reach.use-shims', { shims }),
      fixes: [
        {
          title: message('crib-reach.fix-shims', { shims }),
          edits: [
            {
              kind: 'set',
              at: { element: crib.id, property: 'shims' },
              text,
            },
          ],
          safe: false,
        },
      ],
    };
  }
  // More shims than the policy allows: courses, and what they leave.
  const fit = fitOf(c, w.plan);
  if (fit !== undefined) return { advice: fitAdvice(fit, w.plan), fixes: [fixTo(fit, c, w.plan)] };
  return { advice: term('crib-reach.measure-first'), fixes: [] };
}

export const rule: Rule = {
  id: 'crib-reach',
  title: term('crib-reach.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'contact',
  protects: term('crib-reach.protects'),
  sources: [practice],
  compares: ['gap', 'closes'],
  check: (w) => [
    ...w.cribs().flatMap((c) => misfit(c, w) ?? []),
    ...w.stepChocks().flatMap((c) => stepMisfit(c) ?? []),
  ],
};

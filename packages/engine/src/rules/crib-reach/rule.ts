import { calculation, type Message, name, shown, shownAs, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { fitAdvice, fitOf, fixTo, packingLimits } from '../../crib/packing.js';
import type { Fix } from '../../finding/finding.js';
import { sizeText } from '../../vehicle/place-words.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';
import { stepMisfit } from './step-chock.js';
import { say, words } from './words.js';

/** Least and most that the wedges can fill. Without wedges the stack must meet the part by itself. */
const wedgeRange = (c: CribWorking) => c.closes.value ?? { low: 0, high: 0 };

function misfit(c: CribWorking, w: Workings): RuleFinding | undefined {
  const met = c.contacts.flatMap((k) => k.meets ?? k.given[0] ?? [])[0];
  if (met === undefined) return undefined;
  const { crib, gap } = c;
  const shared = {
    crib: crib.name,
    part: `the ${met.vehicle.name}'s ${met.part.name}`,
  };
  const at = { element: crib.id, property: 'courses' };
  const finding = (message: RuleFinding['message'], fixes: readonly Fix[] = []): RuleFinding => ({
    subject: { element: crib.id },
    at,
    message,
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
      say('tall', {
        ...shared,
        over: shownAs(gap, -gap.value.low),
        sum,
        advice,
      }),
      fixes,
    );
  if (exceeds(gap.value.high, closes.high + 1e-6))
    return finding(
      say('short', {
        ...shared,
        gap: shownAs(gap, gap.value.high),
        closes: closes.high > 0 ? shownAs(c.closes, closes.high) : 'nothing',
        sum,
        advice,
      }),
      fixes,
    );
  if (exceeds(closes.low, gap.value.low + 1e-6))
    return {
      ...finding(
        say('loose', {
          crib: crib.name,
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
  if (value === undefined || !(depth > 0)) return { advice: say('measure-first', {}), fixes: [] };
  const closes = wedgeRange(c);
  const more = Math.floor((value.low - closes.low) / depth + 1e-9);
  const left = {
    low: value.low - more * depth,
    high: value.high - more * depth,
  };
  const courses = crib.courses + more;
  if (courses >= 1 && more !== 0 && left.high <= closes.high + 1e-6)
    return {
      advice: say('use-courses', {
        courses: `${courses}`,
        gap: shown({ ...gap, value: left }),
      }),
      fixes: [
        {
          title: say('fix-courses', { courses: `${courses}` }),
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
  const most = packingLimits(w);
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
      advice: say('use-shims', { shims }),
      fixes: [
        {
          title: say('fix-shims', { shims }),
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
  const fit = fitOf(c, w);
  if (fit !== undefined) return { advice: fitAdvice(fit, w), fixes: [fixTo(fit, c, w)] };
  return { advice: say('measure-first', {}), fixes: [] };
}

export const rule: Rule = {
  id: 'crib-reach',
  title: 'Crib does not reach, or does not fit under, what it captures',
  family: 'timber and cribs',
  severity: 'danger',
  protects: 'A crib that stops short of the load carries nothing until the load drops onto it.',
  sources: [practice],
  compares: ['gap', 'closes'],
  words,
  check: (w) => [
    ...w.cribs().flatMap((c) => misfit(c, w) ?? []),
    ...w.stepChocks().flatMap((c) => stepMisfit(c) ?? []),
  ],
};

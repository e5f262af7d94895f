import { exceeds } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { type StepChockWorking, snugGap } from '../../crib/step-chock-working.js';
import { measured } from '../../figure/compute.js';
import { print, printAs } from '../../figure/print.js';
import { length } from '../../figure/units-of.js';
import type { Fix } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  short:
    'crib {crib} does not reach {part}: {gap} is left open ({sum}) and its wedges close {closes}. {advice}',
  tall: 'crib {crib} is too tall for {part}: it would need {over} more room ({sum}). {advice}',
  loose:
    'crib {crib}: its wedges close at least {closes}, and only {gap} is open ({sum}). They do not go in. {advice}',
  'step-none': 'step chock {chock} is too tall for {part} at every step. Use a lower one.',
  'step-gap':
    'step chock {chock}: {gap} is left open between its step and {part} ({sum}). Slide it in to another step, or fill the gap with a wedge.',
  'step-beside': 'step chock {chock} stands beside {part}, {off} off it. Slide it under.',
  'use-courses': 'Use {courses} courses: {gap} is then left for the wedges.',
  'use-shims': 'Put {shims} of shims under the load.',
  'measure-first': 'Measure the gap and choose courses and shims to fit.',
  'fix-courses': 'Use {courses} courses',
  'fix-shims': 'Add {shims} of shims',
} as const;
const say = messages('crib-reach', words);

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
      ? { governs: 'the range of the height' }
      : {}),
  });
  if (gap.value === undefined) return undefined;
  const closes = wedgeRange(c);
  const sum = gap.formula?.numbers ?? '';
  const { advice, fixes } = remedy(c, w);
  if (exceeds(0, gap.value.low + 1e-6))
    return finding(
      say('tall', {
        ...shared,
        over: printAs(gap, -gap.value.low),
        sum,
        advice,
      }),
      fixes,
    );
  if (exceeds(gap.value.high, closes.high + 1e-6))
    return finding(
      say('short', {
        ...shared,
        gap: printAs(gap, gap.value.high),
        closes: closes.high > 0 ? printAs(c.closes, closes.high) : 'nothing',
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
          closes: printAs({ ...c.closes, rounding: 'up' }, closes.low),
          gap: printAs({ ...gap, rounding: 'down' }, gap.value.low),
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
function remedy(c: CribWorking, w: Workings): { readonly advice: string; readonly fixes: readonly Fix[] } {
  const { crib, gap } = c;
  const value = gap.value;
  const depth = crib.timber.depth;
  if (value === undefined || !(depth > 0)) return { advice: say('measure-first', {}).text, fixes: [] };
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
        gap: print({ ...gap, value: left }),
      }).text,
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
  if (filler > 0 && filler <= 2 * depth && value.high - filler <= closes.high + 1e-6) {
    const shims = printAs(
      { ...gap, unit: w.plan.display === 'us' ? 'in' : 'mm', rounding: 'down' },
      crib.shims + filler,
    );
    return {
      advice: say('use-shims', { shims }).text,
      fixes: [
        {
          title: say('fix-shims', { shims }),
          edits: [
            {
              kind: 'set',
              at: { element: crib.id, property: 'shims' },
              text: shims,
            },
          ],
          safe: false,
        },
      ],
    };
  }
  return { advice: say('measure-first', {}).text, fixes: [] };
}

function stepMisfit(c: StepChockWorking, w: Workings): RuleFinding | undefined {
  const { chock, meets, gap } = c;
  if (meets === undefined) return undefined;
  const subject = { element: chock.id };
  const shared = { chock: chock.name, part: `the ${meets.vehicle.name}'s ${meets.part.name}` };
  const figures = [c.gap, c.height];
  if (!meets.hit) {
    const off = measured(
      length(w.plan.display, 'off', 'distance to the part', 'up'),
      exactly(Math.hypot(meets.place.off.x, meets.place.off.y)),
      'from the chock to the edge of the part',
    );
    return {
      subject,
      at: { element: chock.id, property: 'at' },
      message: say('step-beside', { ...shared, off: print(off) }),
      figures: [off],
    };
  }
  if (gap.value === undefined) return { subject, at: subject, message: say('step-none', shared), figures };
  return exceeds(gap.value.high, snugGap)
    ? {
        subject,
        at: subject,
        message: say('step-gap', {
          ...shared,
          gap: printAs(gap, gap.value.high),
          sum: gap.formula?.numbers ?? '',
        }),
        figures,
      }
    : undefined;
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
    ...w.stepChocks().flatMap((c) => stepMisfit(c, w) ?? []),
  ],
};

import { calculation, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds, show } from '@cribwright/units';
import { given } from '../../figure/compute.js';
import { angle } from '../../figure/units-of.js';
import type { Fix } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import type { StrutWorking } from '../../strut/strut-working.js';
import { lengthText } from '../../vehicle/place-words.js';
import type { Workings } from '../../workings/workings.js';
import { fromMemory, practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'too-flat':
    'Strut {strut} stands at {angle} to the ground ({sum}). Flatter than {least} it pushes out more than up. {advice}',
  'too-steep':
    'Strut {strut} stands at {angle} to the ground ({sum}). Steeper than {most} it holds nothing sideways. {advice}',
  upside: 'Strut {strut}: its head is not above its base. A strut pushes up from the ground.',
  'not-as-typed': 'Strut {strut} is said to stand at {typed}. From head to base it is {angle} ({sum}).',
  'set-foot': 'Set the base {out} out.',
  'set-here': 'The limit is set here: {limit}.',
  'fix-foot': 'Set the base {out} out',
  'fix-typed': 'Write {angle}',
} as const;
const say = messages('strut-angle', words);

function badAngle(s: StrutWorking, w: Workings): RuleFinding | undefined {
  const { strut } = s;
  const subject = { element: strut.id };
  const at = { element: strut.id, property: 'base' };
  const value = s.angle.value;
  if (value === undefined) return undefined;
  const sum = calculation(s.angle);
  const figures = [s.angle, s.rise, s.run];
  if (value.low <= 0)
    return {
      subject,
      at,
      message: say('upside', { strut: strut.name }),
      figures,
    };
  const least = w.limit('least strut angle');
  const most = w.limit('most strut angle');
  const flat = exceeds(least.value?.high ?? 0, value.low);
  if (!flat && !exceeds(value.high, most.value?.low ?? Math.PI)) return undefined;
  const limit = flat ? least : most;
  const beside = shownBeside(s.angle, limit, flat ? 'least' : 'most');
  const target = flat ? least.value?.high : most.value?.low;
  const rise = flat ? s.rise.value?.low : s.rise.value?.high;
  const fix = target === undefined || rise === undefined ? undefined : footFix(s, rise / Math.tan(target), w);
  const advice = fix === undefined ? '' : say('set-foot', { out: fix.title.holes.out ?? '' });
  const shared = { strut: strut.name, angle: beside.demand, sum, advice };
  return {
    subject,
    at,
    severity: flat ? 'danger' : 'warning',
    message: flat
      ? say('too-flat', { ...shared, least: beside.limit })
      : say('too-steep', { ...shared, most: beside.limit }),
    figures: [...figures, limit],
    related:
      limit.ref === undefined
        ? []
        : [
            {
              at: limit.ref,
              message: say('set-here', { limit: shown(limit) }),
            },
          ],
    fixes: fix === undefined ? [] : [fix],
    ...(value.low === value.high
      ? {}
      : {
          governs: flat ? term('figure.the-low-end-of-the-head') : term('figure.the-high-end-of-the-head'),
        }),
  };
}

const footFix = ({ strut }: StrutWorking, run: number, w: Workings): Fix => {
  const out = lengthText(run, w.plan.display);
  return {
    title: say('fix-foot', { out: name(out) }),
    edits: [
      {
        kind: 'set',
        at: { element: strut.id, property: 'base' },
        text: `${out} out`,
      },
    ],
    safe: false,
  };
};

/** More than this between what is typed and what is drawn is a mistake in one of them. */
const slack = (2 * Math.PI) / 180;

function notAsTyped(s: StrutWorking): RuleFinding | undefined {
  const { strut, angle: real } = s;
  const value = real.value;
  if (strut.statedAngle === undefined || value === undefined) return undefined;
  if (strut.statedAngle >= value.low - slack && strut.statedAngle <= value.high + slack) return undefined;
  const at = { element: strut.id, property: 'angle' };
  const typed = given(
    angle('typedAngle', term('figure.angle-as-written'), 'nearest', {
      ref: at,
    }),
    exactly(strut.statedAngle),
    { kind: 'stated' },
  );
  const text = show(value.low, 'angle', 'deg', { rounding: 'nearest' });
  return {
    subject: { element: strut.id },
    at,
    severity: 'warning',
    message: say('not-as-typed', {
      strut: strut.name,
      typed: shown(typed),
      angle: shown(real),
      sum: calculation(real),
    }),
    figures: [typed, real],
    fixes: [
      {
        title: say('fix-typed', { angle: name(text) }),
        edits: [{ kind: 'set', at, text }],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'strut-angle',
  title: 'Strut too flat, too steep, or not as written',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A flat strut kicks its base out; a steep one holds nothing sideways.',
  sources: [practice, fromMemory('US Army Corps of Engineers Shoring Operations Guide, section 2')],
  compares: ['angle', 'least strut angle', 'most strut angle'],
  words,
  check: (w) => w.struts().flatMap((s) => [badAngle(s, w) ?? [], notAsTyped(s) ?? []].flat()),
};

import type { Fix, Workings } from '@cribwright/engine';
import type { StrutWorking } from '@cribwright/engine/internal';
import { lengthText } from '@cribwright/engine/internal';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exactly, given } from '@cribwright/model';
import { angle } from '@cribwright/model/internal';
import { exceeds, show } from '@cribwright/units';
import { fromMemory, practice, type Rule, type RuleFinding } from '../definition/rule.js';

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
      message: message('strut-angle.upside', { strut: name(strut.name) }),
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
  const run = target === undefined || rise === undefined ? undefined : rise / Math.tan(target);
  const out = run === undefined ? undefined : lengthText(run, w.plan.display);
  const shared = {
    strut: name(strut.name),
    angle: beside.demand,
    sum,
    ...(out === undefined ? {} : { advice: message('strut-angle.set-foot', { out: name(out) }) }),
  };
  return {
    subject,
    at,
    severity: flat ? 'danger' : 'warning',
    message: flat
      ? message('strut-angle.too-flat', { ...shared, least: beside.limit })
      : message('strut-angle.too-steep', { ...shared, most: beside.limit }),
    figures: [...figures, limit],
    related:
      limit.ref === undefined
        ? []
        : [
            {
              at: limit.ref,
              message: message('strut-angle.set-here', { limit: shown(limit) }),
            },
          ],
    fixes: out === undefined ? [] : [footFix(s, out)],
    ...(value.low === value.high
      ? {}
      : {
          governs: flat ? term('figure.the-low-end-of-the-head') : term('figure.the-high-end-of-the-head'),
        }),
  };
}

/** @param out how far out the base goes, as the plan writes it */
const footFix = ({ strut }: StrutWorking, out: string): Fix => ({
  title: message('strut-angle.fix-foot', { out: name(out) }),
  edits: [
    {
      kind: 'set',
      at: { element: strut.id, property: 'base' },
      text: `${out} out`,
    },
  ],
  safe: false,
});

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
    message: message('strut-angle.not-as-typed', {
      strut: name(strut.name),
      typed: shown(typed),
      angle: shown(real),
      sum: calculation(real),
    }),
    figures: [typed, real],
    fixes: [
      {
        title: message('strut-angle.fix-typed', { angle: name(text) }),
        edits: [{ kind: 'set', at, text }],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'strut-angle',
  title: term('strut-angle.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'element',
  protects: term('strut-angle.protects'),
  sources: [practice, fromMemory('US Army Corps of Engineers Shoring Operations Guide, section 2')],
  compares: ['angle', 'least strut angle', 'most strut angle'],
  check: (w) => w.struts().flatMap((s) => [badAngle(s, w) ?? [], notAsTyped(s) ?? []].flat()),
};

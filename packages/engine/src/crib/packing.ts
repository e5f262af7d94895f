import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import { add, computed, exactly, given, measured, type Plan, type Policy } from '@cribwright/model';
import { length, limitValue, plus } from '@cribwright/model/internal';
import type { Fix } from '../finding/finding.js';
import { setProperty } from '../finding/set-property.js';
import { sizeText } from '../vehicle/place-words.js';
import type { CribWorking } from './crib-working.js';
import { type Fit, fitGap } from './fit-gap.js';

export const shimsFigure = ({ crib }: CribWorking): Figure =>
  given(
    length('shims', term('figure.shims'), 'up', { ref: { element: crib.id, property: 'shims' } }),
    exactly(crib.shims),
    { kind: 'stated' },
  );

/** Shims, and what the wedges fill on top of them: the gap where they close it, else the most that they are to close. */
export function packingFigure(c: CribWorking): Figure {
  const shims = shimsFigure(c);
  const closes = c.closes.value?.high ?? 0;
  const gap = c.gap.value;
  const closed = gap !== undefined && gap.low >= 0 && gap.high <= closes + 1e-6;
  const wedged: Figure = closed
    ? { ...c.gap, key: 'wedged' }
    : measured(
        length('wedged', term('figure.gap-that-the-wedges-close'), 'up'),
        exactly(closes),
        term('figure.the-most-that-they-are-to-close'),
      );
  return computed(
    length('packing', term('figure.shims-and-wedges'), 'up'),
    plus(shims.value, wedged.value),
    '{shims} + {wedged}',
    { shims, wedged },
  );
}

/** The most packing that the policy allows, m. */
export const packingLimits = (policy: Policy) => ({
  shims: limitValue(policy, 'most shims')?.low ?? 0,
  packing: limitValue(policy, 'most packing')?.low ?? 0,
});

/** Courses and shims within the policy's limits that fill the room under what a crib captures. */
export function fitOf(c: CribWorking, { policy }: Plan): Fit | undefined {
  const { captured, base } = c.placed;
  const room = captured && base && add(captured, { low: -base.high, high: -base.low });
  return room && fitGap(room, c.crib.timber.depth, c.closes.value ?? exactly(0), packingLimits(policy));
}

/** A fix that builds a crib with these courses and shims. */
export function fixTo(fit: Fit, c: CribWorking, { display }: Plan): Fix {
  const { crib } = c;
  const set = (property: string, text: string) => setProperty(crib.id, property, text);
  const up = sizeText(fit.shims, display, 'up');
  const courses = name(String(fit.courses));
  return {
    title:
      fit.shims > 0
        ? message('packing.fix-both', { courses, shims: name(up) })
        : message('packing.fix-courses', { courses }),
    edits: [
      ...(fit.courses === crib.courses ? [] : [set('courses', String(fit.courses))]),
      ...(fit.shims > 0 || crib.shims > 0
        ? [set('shims', fit.shims > 0 ? up : `0 ${display === 'us' ? 'in' : 'mm'}`)]
        : []),
    ],
    safe: false,
  };
}

/** The same as advice. */
export const fitAdvice = (fit: Fit | undefined, { display }: Plan) =>
  fit === undefined
    ? term('packing.measure')
    : fit.shims > 0
      ? message('packing.use-both', {
          courses: name(String(fit.courses)),
          shims: name(sizeText(fit.shims, display, 'up')),
        })
      : message('packing.use-courses', { courses: name(String(fit.courses)) });

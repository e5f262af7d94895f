import type { Workings } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { message, name, quantity, shown, term } from '@cribwright/messages';
import { psi } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Paving spreads load by itself: asphalt and concrete bear more than this. 25 psi in Pa, common practice, no source. */
const paved = 25 * psi;

function badBase(c: CribWorking, w: Workings): RuleFinding | undefined {
  const { crib } = c;
  const subject = { element: crib.id };
  const { surface } = w.plan.ground;
  const stand = crib.standsOn;
  const pad =
    stand.kind === 'pad'
      ? w.plan.pads.find((p) => p.id === stand.pad)
      : w.plan.pads.find((p) => p.under === crib.id);
  if (stand.kind === 'pad' && pad === undefined)
    return {
      subject,
      at: { element: crib.id, property: 'stands on' },
      severity: 'danger',
      message: message('crib-base.no-pad', { crib: name(crib.name) }),
    };
  if (pad !== undefined) {
    const short = Math.min(pad.length, pad.width);
    const size = { ...c.width, value: { low: short, high: short } };
    const length = { ...c.width, value: { low: crib.timber.length, high: crib.timber.length } };
    return short >= crib.timber.length - 0.01
      ? undefined
      : {
          subject,
          at: { element: pad.id, property: 'size' },
          message: message('crib-base.short-pad', {
            crib: name(crib.name),
            pad: name(pad.name),
            size: shown(size),
            length: shown(length),
          }),
        };
  }
  if (stand.kind !== 'ground' || crib.base === 'solid' || surface.bearing === undefined) return undefined;
  if (surface.bearing >= paved) return undefined;
  const at = { element: crib.id, property: 'base' };
  const pressure = w.ground().find((g) => g.element === crib.id)?.pressure;
  return {
    subject,
    at,
    message: message('crib-base.open-on-soft', {
      crib: name(crib.name),
      surface: name(surface.name),
      pressure: pressure === undefined ? quantity('pressure', undefined, 'up') : shown(pressure),
    }),
    figures: pressure === undefined ? [] : [pressure],
    fixes: [{ title: term('crib-base.fix-solid'), edits: [{ kind: 'set', at, text: 'solid' }], safe: false }],
  };
}

export const rule: Rule = {
  id: 'crib-base',
  title: term('crib-base.title'),
  family: 'timber and cribs',
  severity: 'warning',
  judges: 'element',
  protects: term('crib-base.protects'),
  sources: [practice],
  compares: ['pressure'],
  check: (w) => w.cribs().flatMap((c) => badBase(c, w) ?? []),
};

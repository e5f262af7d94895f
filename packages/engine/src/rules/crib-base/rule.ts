import { shown } from '@cribwright/messages';
import { psi } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { messages } from '../../finding/message.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'open-on-soft':
    'Crib {crib} stands with an open base on {surface}, which is not paved. Its timbers sink one by one: use a solid base, or a pad. It presses with {pressure}.',
  'short-pad':
    'Crib {crib} stands on pad {pad}, which is {size} the short way. The timbers of its base are {length} long and hang over. Use a pad at least as long.',
  'no-pad': 'Crib {crib} is to stand on a pad that is not in this plan.',
  'fix-solid': 'Use a solid base',
} as const;
const say = messages('crib-base', words);

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
      message: say('no-pad', { crib: crib.name }),
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
          message: say('short-pad', {
            crib: crib.name,
            pad: pad.name,
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
    message: say('open-on-soft', {
      crib: crib.name,
      surface: surface.name,
      pressure: pressure === undefined ? 'not known' : shown(pressure),
    }),
    figures: pressure === undefined ? [] : [pressure],
    fixes: [{ title: say('fix-solid', {}), edits: [{ kind: 'set', at, text: 'solid' }], safe: false }],
  };
}

export const rule: Rule = {
  id: 'crib-base',
  title: 'Base that sinks or hangs over',
  family: 'timber and cribs',
  severity: 'warning',
  protects: 'On soft ground two base timbers sink unevenly and tip the crib.',
  sources: [practice],
  compares: ['pressure'],
  words,
  check: (w) => w.cribs().flatMap((c) => badBase(c, w) ?? []),
};

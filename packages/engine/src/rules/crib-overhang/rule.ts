import { name, shown, shownBeside } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { messages } from '../../finding/message.js';
import { sizeText } from '../../vehicle/place-words.js';
import type { Workings } from '../../workings/workings.js';
import { practice, published, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'too-short':
    'Crib {crib}: its timbers stick out {overhang} past the contacts. At least {least} is asked for, or the ends split and walk out.',
  'too-long':
    'Crib {crib}: its timbers stick out {overhang} past the contacts. More than {most} narrows the base: it is {width} wide.',
  'set-here': 'The limit is set here: {limit}.',
  'fix-overhang': 'Use an overhang of {overhang}',
} as const;
const say = messages('crib-overhang', words);

function badOverhang(c: CribWorking, w: Workings): RuleFinding | undefined {
  const value = c.overhang.value?.low;
  const least = w.limit('least overhang');
  const most = w.limit('most overhang');
  const bottom = least.value?.high;
  const top = most.value?.low;
  if (value === undefined || bottom === undefined || top === undefined) return undefined;
  const short = exceeds(bottom, value);
  if (!short && !exceeds(value, top)) return undefined;
  const limit = short ? least : most;
  const beside = shownBeside(c.overhang, limit, short ? 'least' : 'most');
  const at = { element: c.crib.id, property: 'overhang' };
  const written = sizeText((short ? bottom : top) ?? 0, w.plan.display, short ? 'up' : 'down');
  return {
    subject: { element: c.crib.id },
    at,
    severity: short ? 'danger' : 'warning',
    message: short
      ? say('too-short', {
          crib: c.crib.name,
          overhang: beside.demand,
          least: beside.limit,
        })
      : say('too-long', {
          crib: c.crib.name,
          overhang: beside.demand,
          most: beside.limit,
          width: shown(c.width),
        }),
    figures: [c.overhang, limit, c.width],
    related:
      limit.ref === undefined
        ? []
        : [
            {
              at: limit.ref,
              message: say('set-here', { limit: shown(limit) }),
            },
          ],
    fixes: [
      {
        title: say('fix-overhang', { overhang: name(written) }),
        edits: [{ kind: 'set', at, text: written }],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'crib-overhang',
  title: 'Timber ends too short or too long past the contacts',
  family: 'timber and cribs',
  severity: 'danger',
  protects:
    'Short timber ends split and walk out under load; long ones narrow the base that the height counts on.',
  sources: [practice, published('Rescue Systems 1 (California State Fire Training)', 'chapter 30')],
  compares: ['overhang', 'least overhang', 'most overhang'],
  words,
  check: (w) => w.cribs().flatMap((c) => badOverhang(c, w) ?? []),
};

import type { Workings } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { sizeText } from '@cribwright/engine/internal';
import { message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

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
      ? message('crib-overhang.too-short', {
          crib: name(c.crib.name),
          overhang: beside.demand,
          least: beside.limit,
        })
      : message('crib-overhang.too-long', {
          crib: name(c.crib.name),
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
              message: message('crib-overhang.set-here', { limit: shown(limit) }),
            },
          ],
    fixes: [
      {
        title: message('crib-overhang.fix-overhang', { overhang: name(written) }),
        edits: [{ kind: 'set', at, text: written }],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'crib-overhang',
  title: term('crib-overhang.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'element',
  protects: term('crib-overhang.protects'),
  sources: [practice, published('Rescue Systems 1 (California State Fire Training)', 'chapter 30')],
  compares: ['overhang', 'least overhang', 'most overhang'],
  check: (w) => w.cribs().flatMap((c) => badOverhang(c, w) ?? []),
};

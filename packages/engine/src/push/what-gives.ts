import { at } from '../resting/at.js';
import type { Limit, Program } from './push-program.js';
import type { PushSystem } from './push-system.js';

/** What lets go when the push grows past what is held. `of` names the strut, tie, contact, stack or body. */
export interface Gives {
  readonly kind: Limit['kind'] | 'foot' | 'tips' | 'slides';
  readonly of: string;
}

/**
 * Reads the motion of a collapse: a limit that is spent on the way comes first, then a base that slides, then how
 * the pushed body itself goes.
 */
export function whatGives(
  system: PushSystem,
  body: string,
  p: Program,
  motion: Float64Array,
): Gives | undefined {
  const size = motion.subarray(0, p.rows).reduce((m, v) => Math.max(m, Math.abs(v)), 0);
  const spent = p.limits
    .map((limit, l) => ({ limit, rate: at(motion, p.rows + l) }))
    .filter(({ rate }) => rate > 1e-3 * size)
    .sort((a, b) => order(a.limit.kind) - order(b.limit.kind) || b.rate - a.rate)[0];
  if (spent !== undefined) return { kind: spent.limit.kind, of: spent.limit.of };
  return footThatSlides(system, p, motion, 1e-2 * size) ?? bodyMotion(system, body, p, motion);
}

const order = (kind: Limit['kind']): number => ['strut', 'tie', 'contact', 'lean'].indexOf(kind);

function footThatSlides(
  system: PushSystem,
  p: Program,
  motion: Float64Array,
  least: number,
): Gives | undefined {
  const slid = system.struts.find((s) => {
    const row = p.rowOf.get(`${s.id} foot`);
    return row !== undefined && Math.hypot(at(motion, row), at(motion, row + 1)) > least;
  });
  return slid === undefined ? undefined : { kind: 'foot', of: slid.id };
}

/** Tips when its contacts open farther than they slide; otherwise it slides. */
function bodyMotion(system: PushSystem, body: string, p: Program, motion: Float64Array): Gives | undefined {
  const row = p.rowOf.get(body);
  if (row === undefined) return undefined;
  const m = (i: number) => at(motion, row + i);
  let opens = 0;
  let slides = 0;
  for (const c of system.contacts.filter((o) => o.upper === body)) {
    const x = (c.at.x - p.origin.x) / p.length;
    const y = (c.at.y - p.origin.y) / p.length;
    const z = (c.at.z - p.origin.z) / p.length;
    const along = Math.hypot(m(0) + m(4) * z - m(5) * y, m(1) + m(5) * x - m(3) * z);
    // The model's friction opens a sliding contact by μ × its slide; only more than that is lifting.
    opens = Math.max(opens, m(2) + m(3) * y - m(4) * x - c.friction * along);
    slides = Math.max(slides, along);
  }
  if (!(opens > 0) && !(slides > 0)) return undefined;
  return { kind: opens > 0.25 * slides ? 'tips' : 'slides', of: body };
}

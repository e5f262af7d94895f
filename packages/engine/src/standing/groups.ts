import type { Anchor } from '@cribwright/model';
import { components } from '../loss/components.js';
import { originalSupports } from '../supports/original-supports.js';
import { placedSupports } from '../supports/placed-supports.js';
import type { PlanBody } from '../supports/plan-bodies.js';
import { bodyOfPart } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { isLooseCoupling } from './loose-coupling.js';
import type { Group } from './standing-scene.js';

/** What gives way more softly than this, N/m, holds nothing up. */
const softest = 1;

/**
 * The bodies of a plan, by what holds one to another: contacts, and straps or chains between vehicles. A coupling whose
 * other half is not in the plan is no support.
 */
export function standingGroups(w: SupportWorkings, bodies: readonly PlanBody[]): readonly Group[] {
  const points = [...originalSupports(w.plan), ...placedSupports(w)].filter(
    (p) => p.stiffness >= softest && !isLooseCoupling(p),
  );
  const apart = components(bodies, points);
  const of = (body: string) => apart.findIndex((c) => c.bodies.some((b) => b.id === body));
  const joined = apart.map((_, i) => i);
  for (const tie of w.plan.ties) {
    const [a, b] = [tie.from, tie.to].map((end) => of(bodyAt(end, w) ?? ''));
    if (a === undefined || b === undefined || a < 0 || b < 0) continue;
    const [keep, drop] = [joined[a] ?? a, joined[b] ?? b];
    for (const [i, root] of joined.entries()) if (root === drop) joined[i] = keep;
  }
  return [...new Set(joined)].map((root) => {
    const mine = apart.filter((_, i) => joined[i] === root);
    const ids = new Set(mine.flatMap((c) => c.bodies.map((b) => b.id)));
    // In the order of the plan, however the parts were found.
    return {
      bodies: bodies.filter((b) => ids.has(b.id)),
      points: points.filter((p) => ids.has(p.upper) && (p.lower === 'ground' || ids.has(p.lower))),
    };
  });
}

/** The body that an end of a tie is on. `undefined` for the ground and for a strut's foot. */
export function bodyAt(anchor: Anchor, w: SupportWorkings): string | undefined {
  const on =
    anchor.kind === 'vehicle part'
      ? anchor
      : anchor.kind === 'strut head'
        ? w.plan.struts.find((s) => s.id === anchor.strut)?.head
        : undefined;
  if (on === undefined) return undefined;
  const vehicle = w.vehicles.get(on.vehicle);
  const part = vehicle?.parts.find((p) => p.id === on.part);
  return vehicle === undefined || part === undefined ? on.vehicle : bodyOfPart(vehicle, part);
}

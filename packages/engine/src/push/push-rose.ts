import type { PushResult } from '../analysis/analysis.js';
import { computed, given } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { force, length, share } from '../figure/units-of.js';
import type { JointCorner } from '../loss/components.js';
import { cornerWords } from '../loss/stage-results.js';
import { exactly } from '../model/interval.js';
import { limitValue, limitWord } from '../policy/limit.js';
import type { PlanBody } from '../resting/plan-bodies.js';
import type { Workings } from '../workings/workings.js';
import { givesWords } from './gives-words.js';
import { type HeldPush, heldPush } from './held-push.js';
import { planPushSystem } from './plan-push-system.js';
import { pushAssumptions } from './push-contacts.js';

const directions = 24;

/** Why the push could not be worked out, in words; or the rose. */
export type PushRose = { readonly why: string } | PushResult;

/**
 * How hard a push the finished set-up holds on the main vehicle, from 24 directions: the least over every corner of
 * the ranges, with the working loads off and on. The most that can be held is a concave function of the weights, so
 * that no place inside the ranges is worse than all corners.
 */
export function pushRose(w: Workings): PushRose {
  const vehicle = w.plan.vehicles[0];
  const resting = w.resting();
  const part = resting.parts.find((p) => p.component.bodies.some((b) => b.id === vehicle?.id));
  const body = part?.component.bodies.find((b) => b.id === vehicle?.id);
  if (vehicle === undefined || part === undefined || body === undefined)
    return { why: 'the weight or the centre of gravity of the vehicle is not known' };
  const height = pushHeight(w, body);
  const at = height.value?.high;
  if (at === undefined) return { why: 'the height of its centre of gravity is not known' };
  const last = part.stages.at(-1)?.asBuilt;
  const stage = resting.stages.at(-1);
  const there = part.component.points.filter((_, i) => last?.there[i] === true);
  const cases = part.corners.flatMap((corner) =>
    (w.plan.workingLoads.length > 0 ? [false, true] : [false]).map((working) => ({
      corner,
      working,
      centre: body.corners[corner[part.component.bodies.indexOf(body)] ?? 0],
      system: planPushSystem(w, part.component, there, stage?.standing ?? [], corner, working),
    })),
  );
  const rose = Array.from({ length: directions }, (_, i) => {
    const angle = (2 * Math.PI * i) / directions;
    const direction = { x: Math.cos(angle), y: Math.sin(angle), z: 0 };
    let worst: { held: HeldPush; corner: JointCorner; working: boolean; weight: number } | undefined;
    for (const { corner, working, centre, system } of cases) {
      if (centre === undefined) continue;
      const held = heldPush(system, { body: body.id, at: { x: centre.x, y: centre.y, z: at }, direction });
      if (worst === undefined || shareOf(held, centre.weight) < shareOf(worst.held, worst.weight))
        worst = { held, corner, working, weight: centre.weight };
      if (held.kind !== 'holds') break;
    }
    return { angle, worst };
  });
  if (rose.some(({ worst }) => worst === undefined || worst.held.kind === 'unsolved'))
    return { why: 'no answer could be proven in one of the directions' };
  const results = rose.map(({ angle, worst }) => {
    const governs = [
      cornerWords(part, worst?.corner ?? []),
      worst?.working === true ? 'with the working loads on' : '',
    ]
      .filter((t) => t !== '')
      .join(', ');
    const held = worst?.held;
    const value = held?.kind === 'holds' ? held.force : 0;
    const weight = given(
      force(w.plan.display, 'weight', `weight of ${body.name}`, 'up'),
      exactly(worst?.weight ?? 0),
      {
        kind: 'computed',
      },
    );
    const holds = given(
      force(w.plan.display, 'holds', 'push that it holds up to', 'down', {
        governs,
        assumes: pushAssumptions,
      }),
      exactly(value),
      { kind: 'computed' },
    );
    return {
      angle,
      holds,
      share: shareFigure(w, holds, weight, governs),
      givesFirst:
        held?.kind === 'holds'
          ? givesWords(held.gives, w)
          : { ref: { element: vehicle.id }, how: `nothing holds ${vehicle.name} on this side` },
    };
  });
  const least = results.reduce((a, b) => ((b.share.value?.low ?? 0) < (a.share.value?.low ?? 0) ? b : a));
  return {
    vehicle: vehicle.id,
    height,
    directions: results,
    least: {
      ...least.share,
      key: 'least',
      label: `least push that it holds up to, ${towardWords(least.angle)}, as a share of the weight`,
    },
  };
}

const shareOf = (held: HeldPush, weight: number): number =>
  held.kind === 'holds' ? held.force / weight : held.kind === 'unsolved' ? Number.NEGATIVE_INFINITY : 0;

const shareFigure = (w: Workings, holds: Figure, weight: Figure, governs: string): Figure =>
  computed(
    share(w.plan.display, 'share', 'share of the weight', 'down', { governs }),
    exactly((holds.value?.low ?? 0) / (weight.value?.high ?? 1)),
    '{holds} ÷ {weight}',
    { holds, weight },
  );

/** At the height that the policy sets; of a range the high end, which tips sooner. */
function pushHeight(w: Workings, body: PlanBody): Figure {
  const limit = w.plan.policy.limits['push height'];
  const word = limitWord(w.plan.policy, 'push height');
  const head = length(w.plan.display, 'pushHeight', 'height of the push above the ground', 'up', {
    ref: limit.ref,
    governs: word === 'cargo centre' ? 'the high end' : undefined,
  });
  const source = {
    kind: 'policy',
    policy: w.plan.policy.name,
    limit: 'push height',
    of: limit.source,
  } as const;
  if (word === 'cargo centre')
    return given(head, body.centreHeight === undefined ? undefined : exactly(body.centreHeight.high), source);
  if (word === 'top of body') {
    const height = w.vehicles.get(body.vehicle)?.height;
    return given(head, height === undefined ? undefined : exactly(height), source);
  }
  return given(head, limitValue(w.plan.policy, 'push height'), source);
}

/** `toward the rear`, `toward the front and the driver side`. */
export function towardWords(angle: number): string {
  const x = Math.cos(angle);
  const y = Math.sin(angle);
  const along = x > 0 ? 'the rear' : 'the front';
  const across = y > 0 ? 'the passenger side' : 'the driver side';
  if (Math.abs(y) < 1e-9 || Math.abs(y) < 0.2 * Math.abs(x)) return `toward ${along}`;
  if (Math.abs(x) < 0.2 * Math.abs(y)) return `toward ${across}`;
  return `toward ${along} and ${across}`;
}

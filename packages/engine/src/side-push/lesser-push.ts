import { type Message, message, name, term } from '@cribwright/messages';
import { exactly, measured } from '@cribwright/model';
import { force } from '@cribwright/model/internal';
import type { PushResult } from '../analysis/analysis.js';
import { caseWords } from '../standing/case-words.js';
import { endsWords } from '../standing/ends-words.js';
import type { VehiclePush } from '../standing/standing.js';
import type { Group } from '../standing/standing-scene.js';
import { nameOf, type SupportWorkings } from '../supports/support-workings.js';
import { leastOf, shareFigure } from './least-push.js';

type Directions = PushResult['directions'];

/** Share by which a push in space may miss what closed forms give: so near, the exact bound is the answer. */
const accuracy = 0.005;

/**
 * The less of what the linear program allows and what the model in space holds, direction by direction. The program
 * lets load move onto a snug crib that carries nothing; in space friction follows the load that is there.
 *
 * @returns why it is not known, where the model in space has no answer in some direction.
 */
export function lesserPush(
  w: SupportWorkings,
  bound: PushResult,
  found: VehiclePush,
  group: Group,
): PushResult | { readonly why: Message } {
  if (
    found.directions.length < bound.directions.length ||
    found.directions.some((d) => d.ends === undefined || !Number.isFinite(d.push / d.weight))
  )
    return { why: term('push.not-solved') };
  const vehicle = nameOf(w, found.vehicle);
  const directions: Directions = bound.directions.map((most, i) => {
    const d = found.directions[i];
    if (d === undefined) return most;
    const allowed = most.share.value?.low ?? 0;
    const held = d.push / d.weight;
    if (held >= allowed * (1 - accuracy)) return most;
    const governs = caseWords(group, d);
    const weight = measured(
      force('weight', message('figure.weight-of', { body: name(vehicle) }), 'up'),
      exactly(d.weight),
      term('figure.empty-vehicle-cargo-in-this-case'),
    );
    const holds = measured(
      force('holds', term('figure.push-that-it-holds-up-to'), 'down', { governs }),
      exactly(d.push),
      term('standing.pushed-in-space'),
    );
    return {
      angle: d.angle,
      holds,
      share: shareFigure(holds, weight, governs),
      givesFirst: endsWords(w, found, d),
    };
  });
  return { ...bound, directions, least: leastOf(directions) };
}

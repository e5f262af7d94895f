import { name, type Phrase } from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import { elementMessage } from '../element/element-message.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import type { StandingFailure } from './standing.js';
import type { Group } from './standing-scene.js';

/** What did not hold: the vehicle that moved farthest, or else the crib. */
export function whatMoved(
  w: SupportWorkings,
  group: Group,
  { moved }: StandingFailure,
): { readonly element: ElementId; readonly words: Phrase } {
  const body = moved.flatMap((id) => group.bodies.filter((b) => b.id === id))[0];
  if (body !== undefined) return { element: body.vehicle, words: body.name };
  const [crib] = moved;
  if (crib !== undefined) return { element: crib, words: elementMessage(w.plan, crib) };
  const [first] = group.bodies;
  return { element: first?.vehicle ?? w.plan.id, words: first?.name ?? name(w.plan.title) };
}

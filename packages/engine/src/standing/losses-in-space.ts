import { message, name } from '@cribwright/messages';
import { elementMessage } from '../element/element-message.js';
import type { Loss } from '../loss/losses.js';
import { nameOf, type SupportWorkings } from '../supports/support-workings.js';
import type { Group } from './standing-scene.js';

/**
 * What may give way besides what the vertical model loses: the ground under each strut's foot, and a closed coupling.
 */
export const lossesInSpace = (w: SupportWorkings, group: Group): readonly Loss[] => [
  ...w.plan.struts.map((strut) => ({
    id: `${strut.id}/ground`,
    title: message('loss.ground-under-strut', { strut: elementMessage(w.plan, strut.id) }),
    ref: { element: strut.id, property: 'base' },
    points: [strut.id],
  })),
  ...w.plan.contacts
    .filter((c) => c.coupled)
    .map((c) => ({
      id: c.id,
      title: message('standing.coupling', { vehicle: name(nameOf(w, c.lower)) }),
      ref: c.ref,
      points: group.points.filter((p) => p.group === c.id).map((p) => p.id),
    })),
];

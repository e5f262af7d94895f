import { message } from '@cribwright/messages';
import { elementMessage } from '../element/element-message.js';
import type { Loss } from '../loss/losses.js';
import type { SupportWorkings } from '../supports/support-workings.js';

/** The ground under each strut's foot. */
export const footLosses = (w: SupportWorkings): readonly Loss[] =>
  w.plan.struts.map((strut) => ({
    id: `${strut.id}/ground`,
    title: message('loss.ground-under-strut', { strut: elementMessage(w.plan, strut.id) }),
    ref: { element: strut.id, property: 'base' },
    points: [strut.id],
  }));

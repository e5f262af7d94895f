import type { Loss } from '../loss/losses.js';
import type { SupportWorkings } from '../workings/support-workings.js';

/** The ground under each strut's foot. */
export const footLosses = (w: SupportWorkings): readonly Loss[] =>
  w.plan.struts.map((strut) => ({
    id: `${strut.id}/ground`,
    title: `ground gives way under the foot of strut ${strut.name}`,
    ref: { element: strut.id, property: 'foot' },
    points: [strut.id],
  }));

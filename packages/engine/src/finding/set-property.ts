import type { ElementId, PlanEdit } from '@cribwright/model';

/** An edit that writes the value of a property: in place of what stands there, or as a new line. */
export const setProperty = (element: ElementId, property: string, text: string): PlanEdit => ({
  kind: 'set',
  at: { element, property },
  text,
});

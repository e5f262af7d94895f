import type { Plan, PlanEdit } from '@cribwright/model';

/** One course more or less on a crib, as an edit of the plan. A crib keeps at least one course. */
export const coursesEdit = (
  plan: Plan | undefined,
  element: string,
  by: 1 | -1,
): PlanEdit | { readonly refused: 'not a crib' | 'last course' } => {
  const crib = plan?.cribs.find(({ id }) => id === element);
  if (!crib) return { refused: 'not a crib' };
  const courses = crib.courses + by;
  if (courses < 1) return { refused: 'last course' };
  return { kind: 'set', at: { element, property: 'courses' }, text: String(courses) };
};

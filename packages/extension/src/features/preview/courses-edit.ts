import type { Plan, PlanEdit } from '@cribwright/engine';

/** One course more or less on a crib, as an edit of the plan. A crib keeps at least one course. */
export const coursesEdit = (
  plan: Plan | undefined,
  element: string,
  by: 1 | -1,
): PlanEdit | { readonly refused: string } => {
  const crib = plan?.cribs.find(({ id }) => id === element);
  if (!crib)
    return {
      refused: 'Courses can be added to a crib and taken from it. Choose a crib first.',
    };
  const courses = crib.courses + by;
  if (courses < 1)
    return {
      refused: `Crib ${crib.name} has one course. Take the crib out of the text instead.`,
    };
  return {
    kind: 'set',
    at: { element, property: 'courses' },
    text: String(courses),
  };
};

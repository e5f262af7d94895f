import type { PaperTrail } from '../analysis/analysis.js';
import { closingsOf } from '../resting/rest.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { buildCorner } from './build-corner.js';
import { cornerWords } from './corner-words.js';
import type { ComponentRun, LossWorking } from './loss-working.js';
import type { Loss } from './losses.js';
import { paperTrail, type Worked } from './paper-trail.js';
import { cornerPlace } from './range-place.js';
import { loadsAt, scaledComponent, stagesOfPoints } from './stage-run.js';

/** The sums of one case of the finished system, for each group of bodies that rests in it. */
export function paperOf(
  w: SupportWorkings,
  resting: LossWorking,
  loss: Loss | undefined,
): { readonly paper: readonly PaperTrail[] } {
  return {
    paper: resting.parts.flatMap((part) => {
      const worked = workedCase(resting, part, loss);
      return worked === undefined ? [] : [paperTrail(w, worked, cornerWords(part, worked.corner))];
    }),
  };
}

/** The case worked out once more at the last corner: all at the heavy end. */
function workedCase(resting: LossWorking, part: ComponentRun, loss: Loss | undefined): Worked | undefined {
  const { component, corners } = part;
  const corner = corners.at(-1) ?? [];
  const scaled = scaledComponent(component, corner, { stiffness: (p) => p.stiffness });
  const losses = loss === undefined ? [] : [loss];
  const plan = stagesOfPoints(component, resting.stages, losses, resting.presence).map((stage, s, all) =>
    s === all.length - 1 ? stage : { ...stage, losses: [] },
  );
  const last = plan.length - 1;
  const wanted = plan[last]?.losses.length === 0 ? undefined : 0;
  let worked: Worked | undefined;
  buildCorner(
    scaled,
    component.points,
    plan,
    loadsAt(scaled, component, cornerPlace(corner, component.bodies)),
    (stage, lost, rest, placedAt) => {
      if (stage !== last || lost !== wanted || rest.kind !== 'rests') return;
      const there = component.points.map(
        (p, i) => plan[last]?.there[i] === true && loss?.points.includes(p.id) !== true,
      );
      worked = {
        component,
        corner,
        scaled,
        rest: { ...rest, closings: closingsOf(scaled, rest.q) },
        placedAt: placedAt.map((d) => d * scaled.length),
        there,
      };
    },
  );
  return worked;
}

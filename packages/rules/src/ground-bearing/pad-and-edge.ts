import type { GroundResult, Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { message, name, shown, shownBeside } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import type { RuleFinding } from '../definition/rule.js';

const shared = (g: GroundResult) => ({
  subject: { element: g.element },
  at: { element: g.element },
  severity: 'warning' as const,
  figures: [g.pressure, g.edge, g.allowable, g.area],
  ...(g.load.governs === undefined ? {} : { governs: g.load.governs }),
});

/** The mean pressure on what bears is within the limit, and the edge of a stiff base is not. */
export function edgePressed(g: GroundResult, w: Workings): RuleFinding | undefined {
  if (g.edge.value === undefined || !exceeds(g.edge.value.high, g.allowable.value?.low ?? 0))
    return undefined;
  const beside = shownBeside(g.edge, g.allowable);
  return {
    ...shared(g),
    message: message('ground-bearing.edge', {
      support: elementMessage(w.plan, g.element),
      edge: beside.demand,
      pressure: shown(g.pressure),
      allowable: beside.limit,
      surface: name(w.plan.ground.surface.name),
    }),
  };
}

/** A pad that would do if it spread the load over all of itself, of a material that nobody stated. */
export function padUnstated(g: GroundResult, w: Workings): RuleFinding {
  const pad = w.plan.pads.find((p) => p.id === g.pad);
  return {
    ...shared(g),
    at: { element: g.pad ?? g.element },
    couldNotRun: true,
    message: message('ground-bearing.pad-material', {
      pad: name(pad?.name ?? ''),
      support: elementMessage(w.plan, g.element),
    }),
  };
}

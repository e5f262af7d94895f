import type { Analysis } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import type { PlanReply } from '@cribwright/workspace';

/**
 * What a drawing reads of a plan: each figure without the figures that went into it, and each finding without its
 * fixes. Of a large plan that is a quarter of it all. Who wants to see how a figure comes about asks for a hover.
 */
export const forDrawing = ({ analysis, ...reply }: PlanReply): PlanReply => ({
  ...reply,
  analysis: {
    ...analysis,
    bodies: analysis.bodies.map(({ weight, center, ...body }) => ({
      ...body,
      weight: alone(weight),
      center: { x: alone(center.x), y: alone(center.y), z: alone(center.z) },
    })),
    supports: analysis.supports.map(supportAlone),
    ground: analysis.ground.map(
      ({ load, area, bearing, pressure, edge, allowable, padNeeded, ...ground }) => ({
        ...ground,
        load: alone(load),
        area: alone(area),
        bearing: alone(bearing),
        pressure: alone(pressure),
        edge: alone(edge),
        allowable: alone(allowable),
        padNeeded: padNeeded && alone(padNeeded),
      }),
    ),
    findings: analysis.findings.map((finding) => ({ ...finding, figures: [], fixes: [], related: [] })),
  },
});

const supportAlone = ({ figures, contacts, ...support }: Analysis['supports'][number]) => ({
  ...support,
  figures: Object.fromEntries(Object.entries(figures).map(([key, figure]) => [key, alone(figure)])),
  contacts: contacts.map(({ load, asBuilt, bound, capacity, use, ...contact }) => ({
    ...contact,
    load: load && alone(load),
    asBuilt: asBuilt && alone(asBuilt),
    bound: bound && alone(bound),
    capacity: capacity && alone(capacity),
    use: use && alone(use),
  })),
});

/** A figure without what went into it, but for the values that its calculation prints. */
const alone = ({ formula, ...figure }: Figure): Figure => ({
  ...figure,
  inputs: [],
  ...(formula === undefined
    ? {}
    : {
        formula:
          formula.kind === 'words'
            ? formula
            : {
                ...formula,
                over: Object.fromEntries(
                  Object.entries(formula.over).map(([key, { formula: _, ...input }]) => [
                    key,
                    { ...input, inputs: [] },
                  ]),
                ),
              },
      }),
});

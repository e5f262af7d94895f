import { computed, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { force, place } from '../figure/units-of.js';
import { exactly } from '../model/interval.js';
import type { SupportWorkings } from '../workings/support-workings.js';
import type { Component } from './components.js';
import { shareBoundsOf } from './reaction-bounds.js';
import { stackedBounds } from './stacked-bounds.js';

/**
 * The most that each point may carry, whatever the stiffnesses: moments about the line through the far supports.
 * A body with others on it carries theirs too: there it is the greatest over all ways to balance them all.
 */
export function staticBounds({ bodies, points }: Component, w: SupportWorkings): ReadonlyMap<string, Figure> {
  const bounds = new Map<string, Figure>();
  const carrying = new Set(points.map((p) => p.lower));
  for (const [id, most] of stackedBounds({ bodies, points }, ({ upper }) => carrying.has(upper)))
    bounds.set(id, stackedFigure(w, most));
  for (const body of bodies) {
    if (carrying.has(body.id)) continue;
    const own = points.filter((p) => p.upper === body.id);
    const weight = measured(
      force(w.plan.display, 'weight', `weight of ${body.name}`, 'up', { governs: 'the heavy end' }),
      exactly(Math.max(...body.corners.map((c) => c.weight))),
      'empty vehicle + cargo, at its heaviest',
    );
    const shares = shareBoundsOf(
      own.map((p) => p.at),
      body.corners,
    );
    own.forEach((p, i) => {
      const share = shares(i);
      if (share !== undefined) bounds.set(p.id, boundFigure(w, weight, share.most, share.line));
    });
  }
  return bounds;
}

const stackedFigure = (w: SupportWorkings, most: number): Figure =>
  measured(
    force(w.plan.display, 'bound', 'most it could carry, by statics alone', 'up', {
      assumes: [
        'the supports share the loads of all that rests on them in the way that is worst for this one',
        'the greatest over all forces that only push and balance every vehicle: no short sum shows it',
      ],
    }),
    exactly(most),
    'greatest over all forces that only push and balance every vehicle',
  );

function boundFigure(
  w: SupportWorkings,
  weight: Figure,
  most: number,
  line: { readonly center: number; readonly contact: number } | undefined,
): Figure {
  const head = force(w.plan.display, 'bound', 'most it could carry, by statics alone', 'up', {
    assumes: ['the supports share the load in the way that is worst for this one, whatever their stiffness'],
  });
  const value = exactly((weight.value?.high ?? 0) * most);
  if (line === undefined) return computed(head, value, '{weight}', { weight });
  const distance = (key: string, label: string, meters: number) =>
    measured(place(w.plan.display, key, label, 'nearest'), exactly(meters), 'square to that line');
  return computed(head, value, '{weight} × {center} ÷ {contact}', {
    weight,
    center: distance('center', 'distance of the center from the line of the far supports', line.center),
    contact: distance('contact', 'distance of this support from that line', line.contact),
  });
}

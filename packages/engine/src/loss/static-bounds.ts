import type { Figure } from '@cribwright/messages';
import { message, type Phrase, term } from '@cribwright/messages';
import { computed, exactly, measured } from '@cribwright/model';
import { force, place } from '@cribwright/model/internal';
import type { Component } from './components.js';
import { shareBoundsOf } from './reaction-bounds.js';
import { stackedBounds } from './stacked-bounds.js';

/**
 * The most that each point may carry, whatever the stiffnesses: moments about the line through the far supports.
 * A body with others on it carries theirs too: there it is the greatest over all ways to balance them all.
 */
export function staticBounds({ bodies, points }: Component): ReadonlyMap<string, Figure> {
  const bounds = new Map<string, Figure>();
  const carrying = new Set(points.map((p) => p.lower));
  for (const [id, most] of stackedBounds({ bodies, points }, ({ upper }) => carrying.has(upper)))
    bounds.set(id, stackedFigure(most));
  for (const body of bodies) {
    if (carrying.has(body.id)) continue;
    const own = points.filter((p) => p.upper === body.id);
    const weight = measured(
      force('weight', message('figure.weight-of', { body: body.name }), 'up', {
        governs: term('figure.the-heavy-end'),
      }),
      exactly(Math.max(...body.corners.map((c) => c.weight))),
      term('figure.empty-vehicle-cargo-at-its-heaviest'),
    );
    const shares = shareBoundsOf(
      own.map((p) => p.at),
      body.corners,
    );
    own.forEach((p, i) => {
      const share = shares(i);
      if (share !== undefined) bounds.set(p.id, boundFigure(weight, share.most, share.line));
    });
  }
  return bounds;
}

const stackedFigure = (most: number): Figure =>
  measured(
    force('bound', term('figure.most-it-could-carry-by-statics-alone'), 'up', {
      assumes: [
        term('figure.the-supports-share-the-loads-of-all'),
        term('figure.the-greatest-over-all-forces-that-only'),
      ],
    }),
    exactly(most),
    term('figure.greatest-over-all-forces-that-only-push'),
  );

function boundFigure(
  weight: Figure,
  most: number,
  line: { readonly center: number; readonly contact: number } | undefined,
): Figure {
  const head = force('bound', term('figure.most-it-could-carry-by-statics-alone'), 'up', {
    assumes: [term('figure.the-supports-share-the-load-in-the')],
  });
  const value = exactly((weight.value?.high ?? 0) * most);
  if (line === undefined) return computed(head, value, '{weight}', { weight });
  const distance = (key: string, label: Phrase, meters: number) =>
    measured(place(key, label, 'nearest'), exactly(meters), term('figure.square-to-that-line'));
  return computed(head, value, '{weight} × {center} ÷ {contact}', {
    weight,
    center: distance('center', term('figure.distance-of-the-center-from-the-line'), line.center),
    contact: distance('contact', term('figure.distance-of-this-support-from-that-line'), line.contact),
  });
}

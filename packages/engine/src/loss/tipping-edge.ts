import type { Figure } from '@cribwright/messages';
import { list, type Message, term } from '@cribwright/messages';
import { computed, exactly, measured } from '@cribwright/model';
import { length, over, share } from '@cribwright/model/internal';
import { insideBy, nearestEdge, type PolygonPoint, supportPolygon } from '../resting/support-polygon.js';
import type { PlanBody } from '../supports/plan-bodies.js';
import type { SupportPoint } from '../supports/support-points.js';

/** How hard a push at its center of gravity tips a body that stands free. */
export interface TippingEdge {
  readonly body: PlanBody;
  /** From the center of gravity to the nearest line between supports. */
  readonly edge: Figure;
  readonly height: Figure;
  /** Push that tips it, as a share of its weight: edge ÷ height. Unknown where the height is. */
  readonly share: Figure;
  /** `toward the driver side`, plan axes. */
  readonly toward: Message;
}

/** m. A body that rests this near outside the line stands on it, but for the last digit of a sum: it holds no push. */
const hair = 1e-6;

/** Moments about the line it would tip over: push × height = weight × distance. The worst corner of the ranges. */
export function tippingEdge(body: PlanBody, points: readonly SupportPoint[]): TippingEdge | undefined {
  const polygon = supportPolygon(points.map((p) => p.at));
  const worst = body.corners
    .map((c) => ({ c, inside: insideBy(polygon, c) }))
    .sort((a, b) => a.inside - b.inside)[0];
  if (worst === undefined || !(worst.inside > -hair)) return undefined;
  const inside = Math.max(0, worst.inside);
  const edge = measured(
    length('edge', term('figure.distance-of-the-center-of-gravity-inside'), 'down', {
      governs: worst.c.words.length === 0 ? undefined : list(worst.c.words, 'plain'),
    }),
    exactly(inside),
    term('figure.from-the-line-round-its-supports-to'),
  );
  const height = measured(
    length('centerHeight', term('figure.height-of-the-center-of-gravity'), 'up', {
      governs: body.centerHeight?.low === body.centerHeight?.high ? undefined : term('figure.the-high-end'),
    }),
    body.centerHeight === undefined ? undefined : exactly(body.centerHeight.high),
    term('figure.middle-of-all-weight-empty-vehicle-and'),
  );
  return {
    body,
    edge,
    height,
    share: computed(
      share('tips', term('figure.push-that-tips-it-as-a-share'), 'down', {
        governs: worst.c.words.length === 0 ? undefined : list(worst.c.words, 'plain'),
      }),
      over(edge.value, height.value),
      '{edge} ÷ {height}',
      { edge, height },
    ),
    toward: side(polygon, worst.c),
  };
}

function side(polygon: readonly PolygonPoint[], from: PolygonPoint): Message {
  const edge = nearestEdge(polygon, from);
  if (edge === undefined) return term('push.toward-driver');
  const out = { x: edge.b.y - edge.a.y, y: edge.a.x - edge.b.x };
  return Math.abs(out.y) >= Math.abs(out.x)
    ? term(`push.toward-${out.y < 0 ? 'driver' : 'passenger'}`)
    : term(`push.toward-${out.x < 0 ? 'front' : 'rear'}`);
}

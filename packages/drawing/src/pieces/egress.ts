import { message, name } from '@cribwright/messages';
import type { Egress } from '@cribwright/model';
import type { Look } from '../look/look.js';
import type { Box } from '../scene/bounds.js';
import { group, line, path } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { at3, type Point3 } from '../scene/vector.js';
import { fromAbove } from '../space/project.js';
import { reachOfThings } from '../space/thing-places.js';
import type { Placing } from './place-on-sheet.js';

/** An egress as far as the drawing shows it. */
export interface ShownWay {
  readonly way: Egress;
  readonly points: readonly Point3[];
  /** It goes on past the edge of the drawing. */
  readonly goesOn: boolean;
}

/** How far past everything else a way out is followed, m. */
const followed = 2.5;

/** The egress paths, each cut where it leaves the neighborhood of vehicles and supports. */
export function shownWays(look: Look): readonly ShownWay[] {
  if (look.plan.egress.length === 0) return [];
  const reach = reachOfThings(look.things, fromAbove, [], 'bare');
  const box = {
    left: reach.left - followed,
    top: reach.top - followed,
    right: reach.right + followed,
    bottom: reach.bottom + followed,
  };
  return look.plan.egress.map((way) => {
    const kept: SheetPoint[] = [];
    let goesOn = false;
    for (const [i, p] of way.points.entries()) {
      const here = fromAbove.flat(at3(p.x, p.y, 0));
      const before = kept.at(-1);
      const share = before === undefined ? 1 : shareInside(before, here, box);
      if (before !== undefined && share < 1 && i > 0) {
        kept.push({ x: before.x + (here.x - before.x) * share, y: before.y + (here.y - before.y) * share });
        goesOn = true;
        break;
      }
      kept.push(here);
    }
    return { way, points: kept.map((p) => at3(p.x, -p.y, 0)), goesOn };
  });
}

/** How much of the way from `a` to `b` lies in the box, from `a` on; all of it where `a` is already outside. */
function shareInside(a: SheetPoint, b: SheetPoint, box: Box): number {
  if (a.x < box.left || a.x > box.right || a.y < box.top || a.y > box.bottom) return 1;
  const limits = [
    b.x > a.x ? (box.right - a.x) / (b.x - a.x) : b.x < a.x ? (box.left - a.x) / (b.x - a.x) : 1,
    b.y > a.y ? (box.bottom - a.y) / (b.y - a.y) : b.y < a.y ? (box.top - a.y) / (b.y - a.y) : 1,
  ];
  return Math.max(0, Math.min(1, ...limits));
}

/** The crew's egress: its middle line with an arrow, and its two edges. */
export function egressItems(
  look: Look,
  { toSheet, scale }: Placing,
  ways: readonly ShownWay[],
): readonly Item[] {
  return ways.map(({ way, points: shown, goesOn }) => {
    const points = shown.map(toSheet);
    const half = (way.width * scale.perMeter) / 2;
    const edges = points.slice(1).flatMap((to, i): Item[] => {
      const from = points[i] ?? to;
      const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
      const [nx, ny] = [(-(to.y - from.y) / long) * half, ((to.x - from.x) / long) * half];
      return [-1, 1].map((s) =>
        line(
          `edge ${i} ${s}`,
          'egress',
          { x: from.x + s * nx, y: from.y + s * ny },
          { x: to.x + s * nx, y: to.y + s * ny },
          { dash: 'dashed', width: 0.3 },
        ),
      );
    });
    const [before, last] = [points.at(-2), points.at(-1)];
    const tip =
      before === undefined || last === undefined
        ? []
        : [line('tip', 'egress', before, last, { head: 'arrow' })];
    return group(way.id, [...edges, path('way', 'egress', points.slice(0, -1)), ...tip], {
      ref: way.ref,
      name: look.say.message(
        message(goesOn ? 'piece.egress-goes-on' : 'piece.egress', {
          name: name(way.name),
          width: name(look.say.long(way.width, 'down')),
        }),
      ),
    });
  });
}

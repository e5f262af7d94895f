import { message, name } from '@cribwright/messages';
import { poseOf } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { around } from '../scene/bounds.js';
import { group, polygon } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { at3 } from '../scene/vector.js';
import { centerMark } from '../sheet/legend.js';
import type { Placing } from './place-on-sheet.js';

/** The center of gravity of each body: its sign, and the box that it may lie in where it is not known exactly. */
export function centers(look: Look, { toSheet }: Placing): readonly Item[] {
  return look.analysis.bodies.flatMap((body) => {
    const { x, y, z } = body.center;
    const vehicle = look.plan.vehicles.find((v) => v.id === body.vehicle);
    if (vehicle === undefined) return [];
    // The engine gives the center of a vehicle that lies as it lies; of one that pitches, in its own axes.
    const pose = poseOf(
      vehicle.position.kind === 'pitched' ? vehicle : { ...vehicle, position: { kind: 'upright' } },
    );
    if (x.value === undefined || y.value === undefined) return [];
    const heights = z.value ?? { low: 0, high: 0 };
    const corners = [x.value.low, x.value.high].flatMap((cx) =>
      [y.value?.low ?? 0, y.value?.high ?? 0].flatMap((cy) =>
        [heights.low, heights.high].map((cz) => toSheet(pose(at3(cx, cy, cz)))),
      ),
    );
    const box = around(corners);
    const range =
      box.right - box.left < 1 && box.bottom - box.top < 1
        ? []
        : [
            polygon(
              'range',
              'label',
              [
                { x: box.left, y: box.top },
                { x: box.right, y: box.top },
                { x: box.right, y: box.bottom },
                { x: box.left, y: box.bottom },
              ],
              'none',
              { dash: 'dotted', width: 0.3 },
            ),
          ];
    return [
      group(
        `center of ${body.name}`,
        [...range, ...centerMark('mark', (box.left + box.right) / 2, (box.top + box.bottom) / 2, 1.7)],
        {
          ref: { element: body.vehicle },
          name: look.say.message(
            message('piece.center-of-gravity', {
              name: name(body.name),
              place: name(look.say.figure(x)),
            }),
          ),
        },
      ),
    ];
  });
}

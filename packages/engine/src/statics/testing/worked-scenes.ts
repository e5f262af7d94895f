import type { Scene } from '../scene.js';
import {
  at,
  block,
  body,
  contact,
  degrees,
  end,
  foot,
  footContact,
  ground,
  onBody,
  onFoot,
  sceneOf,
  strut,
  tie,
} from './sample-scenes.js';

/** A ladder of 4 m, unless said, that leans at an angle (deg) to the floor against a wall at x = 0. */
export function ladder(angle: number, floor: number, wall: number, weight: number, length = 4): Scene {
  const out = length * Math.cos(degrees(angle));
  const top = length * Math.sin(degrees(angle));
  return sceneOf({
    bodies: [body(weight, at(out / 2, 0, top / 2))],
    contacts: [-0.2, 0.2].flatMap((y) => [
      contact(`floor ${y}`, at(out, y, 0), { friction: floor }),
      contact(`wall ${y}`, at(0, y, top), { normal: at(1, 0, 0), friction: wall }),
    ]),
  });
}

/** A weight at rest on two pairs of raked struts, at an angle (deg) to the ground; the feet of each may be tied across. */
export function rakedPairs(
  weight: number,
  angle: number,
  friction: number,
  tied: boolean,
  footWeight = 1,
): Scene {
  const out = 2 / Math.tan(degrees(angle));
  const sides = [-1, 1].flatMap((x) =>
    [-1, 1].map((y) => ({ x, y, id: `${x} ${y}`, place: at(x * (1 + out), y, 0) })),
  );
  return sceneOf({
    bodies: [body(weight, at(0, 0, 1.5))],
    feet: sides.map((s) => foot(`foot ${s.id}`, s.place, footWeight)),
    contacts: sides.map((s) => footContact(`foot ${s.id}`, s.place, friction)),
    struts: sides.map((s) =>
      strut(`strut ${s.id}`, end(onBody(), at(s.x, s.y, 2)), end(onFoot(`foot ${s.id}`), s.place)),
    ),
    ties: tied
      ? [-1, 1].map((y) =>
          tie(
            `tie ${y}`,
            end(onFoot(`foot -1 ${y}`), at(-1 - out, y, 0)),
            end(onFoot(`foot 1 ${y}`), at(1 + out, y, 0)),
          ),
        )
      : [],
  });
}

/** Two legs of 4.00 kg, 1.10 m apart at a smooth floor, 1.30 m high, with a tie 0.50 m below the hinge; g = 9.8 m/s^2. */
export function aFrame(): Scene {
  const leg = (x: number, id: string) => body(4 * 9.8, at(x * 0.275, 0, 0.65), id);
  const half = 0.55 * (0.5 / 1.3);
  return sceneOf({
    bodies: [leg(-1, 'left'), leg(1, 'right')],
    contacts: [
      ...['left', 'right'].flatMap((id) =>
        [-0.2, 0.2].map((y) =>
          contact(`${id} ${y}`, at(id === 'left' ? -0.55 : 0.55, y, 0), { upper: onBody(id), friction: 0 }),
        ),
      ),
      ...[-0.2, 0.2].map((y) =>
        contact(`hinge ${y}`, at(0, y, 1.3), {
          upper: onBody('right'),
          lower: onBody('left'),
          normal: at(1, 0, 0),
          friction: 0.3,
        }),
      ),
    ],
    ties: [tie('tie', end(onBody('left'), at(-half, 0, 0.8)), end(onBody('right'), at(half, 0, 0.8)))],
  });
}

const corners = (id: string, lower: string | undefined, z: number, friction: number, x0 = 0) =>
  [-1, 1].flatMap((x) =>
    [-1, 1].map((y) =>
      contact(`${id} ${x} ${y}`, at(x0 + x, y, z), {
        upper: onBody(id),
        lower: lower === undefined ? ground : onBody(lower),
        friction,
      }),
    ),
  );

/** Body `b`, half as heavy, on body `a` on the ground. */
export const pile = (weight: number): Scene =>
  sceneOf({
    bodies: [body(weight, at(0, 0, 0.25), 'a'), body(weight / 2, at(0, 0, 0.75), 'b')],
    contacts: [...corners('a', undefined, 0, 0.2), ...corners('b', 'a', 0.5, 0.5)],
  });

/** Two like blocks on the ground, 4 m apart, with a strut or a tie from one to the other. */
export function strutBetweenBlocks(weight: number, by: 'strut' | 'tie'): Scene {
  const left = end(onBody('left'), at(1, 0, 0));
  const right = end(onBody('right'), at(3, 0, 0));
  return sceneOf({
    bodies: [body(weight, at(0, 0, 0.2), 'left'), body(weight, at(4, 0, 0.2), 'right')],
    contacts: [...corners('left', undefined, 0, 0.4), ...corners('right', undefined, 0, 0.4, 4)],
    struts: by === 'strut' ? [strut('between', right, left)] : [],
    ties: by === 'tie' ? [tie('between', left, right)] : [],
  });
}

/** A block of 4 by 2 by 3 m with one strut at 45 deg against its side at 2 m, soft, its foot tied or not. */
export function shoredBlock(weight: number, friction: number, tied: boolean, capacity = 5e3): Scene {
  const stands = block({ length: 4, width: 2, height: 3 }, 0.9, weight);
  const foothold = at(2, 3, 0);
  return {
    ...stands,
    feet: [foot('foot', foothold, 10)],
    contacts: [...stands.contacts, footContact('foot', foothold, friction)],
    struts: [
      strut('S', end(onBody(), at(2, 1, 2)), end(onFoot('foot'), foothold), { capacity, stiffness: 1e5 }),
    ],
    ties: tied
      ? [tie('T', end(onFoot('foot'), foothold), end(ground, at(2, -6, 0)), { stiffness: 1e7 })]
      : [],
  };
}

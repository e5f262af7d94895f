import type { PushResult } from '@cribwright/engine';
import { type Message, message, name, term } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { at, circle, group, line, path, polygon, text } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { type } from '../sheet/sizes.js';

/** The longest push, mm on the sheet. */
export const radius = 48;

/** The rose of a push from every side: how much it holds up to, beside what the policy asks, round the body. */
export const pushRose = (
  push: PushResult,
  look: Look,
  center: SheetPoint,
  asked: number,
): readonly Item[] => {
  const most = Math.max(asked * 1.5, ...push.directions.map((d) => d.share.value?.low ?? 0)) || 1;
  return [
    rose(push, center, most, asked, look),
    ...rings(center, most, look),
    asking(center, asked, most, look),
    outline(center),
    ...ways(center, look),
  ];
};

/** Direction 0 pushes toward the rear (right on the sheet), a quarter turn toward the passenger side (up). */
const spot = (center: SheetPoint, angle: number, share: number, most: number): SheetPoint => {
  const r = (radius * Math.max(0, share)) / most;
  return at(center.x + Math.cos(angle) * r, center.y - Math.sin(angle) * r);
};

/** Steps that a reader can count by, in parts of the weight. */
const steps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10];

/** Rings at round shares of the weight, each with its number half way between two pushes, clear of the marks. */
function rings(center: SheetPoint, most: number, look: Look): readonly Item[] {
  const step = steps.find((s) => most / s <= 5) ?? most / 4;
  const way = -Math.PI / 4 - Math.PI / 24;
  return Array.from({ length: Math.floor(most / step + 1e-9) }, (_, i) => {
    const share = step * (i + 1);
    const end = spot(center, way, share, most);
    return [
      circle(`ring ${share.toFixed(3)}`, 'faint', center, (radius * share) / most, 'none'),
      text(
        `ring words ${share.toFixed(3)}`,
        at(end.x, end.y + 1),
        look.say.ratio(Number(share.toFixed(6))),
        type.small,
        {
          anchor: 'middle',
          tone: 'dimension',
          halo: true,
        },
      ),
    ];
  }).flat();
}

const asking = (center: SheetPoint, asked: number, most: number, look: Look): Item =>
  group(
    'asked',
    [
      path(
        'ring',
        'danger',
        Array.from({ length: 48 }, (_, i) => spot(center, (i * Math.PI) / 24, asked, most)),
        { closed: true, width: 0.3 },
      ),
      ...Array.from({ length: 24 }, (_, i) =>
        line(
          `mark ${i}`,
          'danger',
          spot(center, (i * Math.PI) / 12, asked * 0.94, most),
          spot(center, (i * Math.PI) / 12, asked * 1.06, most),
        ),
      ),
    ],
    {
      ref: look.plan.policy.limits['push margin'].ref,
      name: look.say.message(message('piece.required', { share: name(look.say.ratio(asked)) })),
    },
  );

function rose(push: PushResult, center: SheetPoint, most: number, asked: number, look: Look): Item {
  const points = push.directions.map((d) => spot(center, d.angle, d.share.value?.low ?? 0, most));
  return group('rose', [
    path('outline', 'load', points, { closed: true, fill: 'light', width: 0.5 }),
    ...push.directions.map((d, i) => {
      const tip = points[i] ?? center;
      const low = d.share.value?.low;
      const less = low === undefined || low < asked * (1 - 1e-9);
      const holes = {
        direction: wayWords(d.angle),
        force: name(look.say.figure(d.holds)),
        share: name(look.say.figure(d.share)),
      };
      return group(
        `direction ${i}`,
        [
          line('spoke', 'load', center, tip, { width: 0.15 }),
          less
            ? polygon(
                'mark',
                'danger',
                [at(tip.x, tip.y - 1.4), at(tip.x + 1.4, tip.y + 1.1), at(tip.x - 1.4, tip.y + 1.1)],
                'solid',
              )
            : circle('mark', 'load', tip, 0.9, 'solid'),
        ],
        {
          ref: d.givesFirst?.ref ?? { element: push.vehicle },
          name: look.say.message(
            d.givesFirst === undefined
              ? message('piece.push-name', holes)
              : message('piece.push-name-fails', { ...holes, how: d.givesFirst.how }),
          ),
        },
      );
    }),
  ]);
}

/** The body seen from above, its front to the left. */
const outline = (center: SheetPoint): Item =>
  polygon(
    'body',
    'vehicle',
    [
      at(center.x - 12, center.y - 3),
      at(center.x + 12, center.y - 3),
      at(center.x + 12, center.y + 3),
      at(center.x - 12, center.y + 3),
    ],
    'none',
  );

const ways = (center: SheetPoint, { say }: Look): readonly Item[] => {
  const far = radius + 4;
  return [
    text('front', at(center.x - far, center.y + 1), say.message(term('piece.toward-front')), type.small, {
      anchor: 'end',
      turn: 0,
    }),
    text('rear', at(center.x + far, center.y + 1), say.message(term('piece.toward-rear')), type.small),
    text('passenger', at(center.x, center.y - far), say.message(term('piece.toward-passenger')), type.small, {
      anchor: 'middle',
    }),
    text('driver', at(center.x, center.y + far + 2), say.message(term('piece.toward-driver')), type.small, {
      anchor: 'middle',
    }),
  ];
};

const mainWays = ['piece.way-rear', 'piece.way-passenger', 'piece.way-front', 'piece.way-driver'] as const;
const quarter = Math.PI / 2;

/** Where a push goes, each of the 24 by a name of its own: `driver side, 15 deg to rear`. */
export function wayWords(angle: number): Message {
  const turns = Math.round(angle / quarter);
  const off = Math.round(((angle - turns * quarter) * 180) / Math.PI);
  const way = (n: number) => term(mainWays[((n % 4) + 4) % 4] ?? mainWays[0]);
  if (off === 0) return way(turns);
  return message('piece.way-between', {
    way: way(turns),
    degrees: name(String(Math.abs(off))),
    to: way(turns + Math.sign(off)),
  });
}

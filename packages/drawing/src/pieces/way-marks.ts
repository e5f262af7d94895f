import { message, term } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { at3 } from '../scene/vector.js';
import { margin, sheetWidth, type } from '../sheet/sizes.js';
import { facingWords, groundWords } from './ground-words.js';
import type { Placing } from './place-on-sheet.js';

/**
 * An arrow to the north, seen from above: the front points left, and north lies as far to the left of it, as one looks
 * ahead, as the front points right of north.
 */
function northMark({ say }: Look, facing: number, x: number, y: number): Item {
  const [dx, dy] = [-Math.cos(facing), Math.sin(facing)];
  const [reach, beyond] = [3, 5.2];
  return group(
    'north',
    [
      line('arrow', 'label', at(x - dx * reach, y - dy * reach), at(x + dx * reach, y + dy * reach), {
        head: 'arrow',
      }),
      text(
        'words',
        at(x + dx * beyond, y + dy * beyond + 1),
        say.message(term('piece.north-letter')),
        type.small,
        {
          weight: 'bold',
          anchor: 'middle',
        },
      ),
    ],
    { name: say.message(message('piece.north', { facing: facingWords(facing) })) },
  );
}

/** An arrow to the front at the left, and the grade where the ground falls. */
export function frontMark({ say }: Look, y: number, left: number): Item {
  return group('front', [
    line('arrow', 'label', at(left + 8, y), at(left, y), { head: 'arrow' }),
    text('words', at(left + 9.5, y + 1), say.message(term('piece.front')), type.small, { weight: 'bold' }),
  ]);
}

export function planMarks(look: Look, { box, toSheet }: Placing): readonly Item[] {
  const middle = toSheet(at3(0, look.plan.vehicles[0]?.at.y ?? 0, 0)).y;
  const left = box.left - 4;
  return [
    line('centerline', 'dimension', at(left, middle), at(box.right + 4, middle), {
      dash: 'chain',
      width: 0.15,
    }),
    frontMark(look, box.top - 28, box.left),
    ...(look.plan.ground.facing === undefined
      ? []
      : [northMark(look, look.plan.ground.facing, box.left + 62, box.top - 28)]),
    text(
      'passenger side',
      at(box.left + 26, box.top - 27),
      look.say.message(term('piece.passenger-side')),
      type.small,
      {
        tone: 'dimension',
      },
    ),
    text(
      'driver side',
      at(margin, box.bottom + 15),
      look.say.message(term('piece.driver-side')),
      type.small,
      { tone: 'dimension' },
    ),
    ...gradeMark(look, sheetWidth - margin, box.top - 28),
  ];
}

const fall = {
  front: [-1, 0],
  rear: [1, 0],
  'driver side': [0, 1],
  'passenger side': [0, -1],
} as const;

export function gradeMark(look: Look, right: number, y: number): readonly Item[] {
  const { grade, toward, unsaid } = look.plan.ground;
  const words = look.say.message(groundWords(look.plan.ground, look.say.ratio(grade)));
  const [dx, dy] = fall[toward];
  const bare = grade === 0 || unsaid !== undefined;
  const arrow = bare
    ? []
    : [
        line('arrow', 'ground', at(right - 4 - dx * 4, y - dy * 4), at(right - 4 + dx * 4, y + dy * 4), {
          head: 'arrow',
        }),
      ];
  return [
    group(
      'ground mark',
      [
        ...arrow,
        text('words', at(right - (bare ? 0 : 10), y + 1), words, type.small, {
          anchor: 'end',
          tone: 'dimension',
        }),
      ],
      { ref: look.plan.ground.ref, name: words },
    ),
  ];
}

import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { margin, sheetWidth, type } from '../sheet/sizes.js';
import { at3 } from '../space/vector.js';
import type { Look } from '../views/look.js';
import type { Placing } from './place-on-sheet.js';

/** An arrow to the front at the left, and the grade where the ground falls. */
export function frontMark(y: number, left: number): Item {
  return group('front', [
    line('arrow', 'label', at(left + 8, y), at(left, y), { head: 'arrow' }),
    text('words', at(left + 9.5, y + 1), 'FRONT', type.small, { weight: 'bold' }),
  ]);
}

export function planMarks(look: Look, { box, toSheet }: Placing): readonly Item[] {
  const middle = toSheet(at3(0, look.plan.vehicles[0]?.at.y ?? 0, 0)).y;
  const left = box.left - 4;
  return [
    line('centreline', 'dimension', at(left, middle), at(box.right + 4, middle), {
      dash: 'chain',
      width: 0.15,
    }),
    frontMark(box.top - 28, box.left),
    text('passenger side', at(box.left + 26, box.top - 27), 'passenger side', type.small, {
      tone: 'dimension',
    }),
    text('driver side', at(margin, box.bottom + 15), 'driver side', type.small, { tone: 'dimension' }),
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
  const { grade, toward, surface } = look.plan.ground;
  const words =
    grade === 0
      ? `${surface.name}, level`
      : `${surface.name}, falls ${look.say.ratio(grade)} toward ${toward === 'front' || toward === 'rear' ? `the ${toward}` : `the ${toward}`}`;
  const [dx, dy] = fall[toward];
  const arrow =
    grade === 0
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
        text('words', at(right - (grade === 0 ? 0 : 10), y + 1), words, type.small, {
          anchor: 'end',
          tone: 'dimension',
        }),
      ],
      { ref: look.plan.ground.ref, name: words },
    ),
  ];
}

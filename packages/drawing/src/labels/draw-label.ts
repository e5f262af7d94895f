import type { Box } from '../scene/bounds.js';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { badge } from '../sheet/legend.js';
import { capHeight, textWidth } from '../text/font-metrics.js';
import { badgeRoom, type Label, labelGap, labelSize, labelStep } from './label.js';
import type { Leader } from './leader.js';

/** From a label to what it names. Drawn before all labels: a line never runs over words. */
export const drawLeader = (label: Label, leader: Leader): Item =>
  group(`leader ${label.key}`, [line('leader', 'dimension', ...leader, { width: 0.15 })], { ref: label.ref });

/** A label in its box, on a plate of paper, with its sign. */
export function drawLabel(label: Label, box: Box): Item {
  const size = labelSize;
  const left = box.left + 0.5 + (label.badge === undefined ? 0 : badgeRoom);
  const base = box.top + 0.3 + size * capHeight;
  const tone = label.tone === undefined ? {} : { tone: label.tone };
  const beside = () => at(left + textWidth(label.name, size, 'bold') + labelGap, base);
  const lines = [
    text('name', at(left, base), label.name, size, { weight: 'bold', ...tone }),
    ...(label.beside === undefined ? [] : [text('beside', beside(), label.beside, size, tone)]),
    ...label.lines.map((words, i) =>
      text(`line ${i}`, at(left, base + (i + 1) * labelStep), words, size, tone),
    ),
  ];
  const sign =
    label.badge === undefined
      ? []
      : badge('badge', label.badge, box.left + 2.1, box.top + 0.3 + size * 0.36, 3.6);
  const [wide, high] = [box.right - box.left, box.bottom - box.top];
  return group(
    `label ${label.key}`,
    [
      // A plate of paper, so that nothing under the words makes them hard to read.
      rectangle('plate', 'scale', box.left, box.top - 0.2, wide, high + 0.2, 'light', { width: 0 }),
      ...sign,
      ...lines,
    ],
    { ref: label.ref },
  );
}

import type { Finding } from '@cribwright/engine';
import { message } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { at, group, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { badge } from '../sheet/legend.js';
import { leading, margin, sheetWidth, type } from '../sheet/sizes.js';
import { wrap } from '../text/wrap.js';

const rankOf = (f: Finding): number =>
  f.severity === 'danger' && f.couldNotRun !== true
    ? 0
    : f.couldNotRun === true
      ? 1
      : f.severity === 'warning'
        ? 2
        : 3;

/** What is found of one support, in sentences under its close-up, the gravest first. Nothing where there is nothing. */
export function findingsBlock(
  element: string,
  look: Look,
  top: number,
): { readonly items: readonly Item[]; readonly bottom: number } {
  const open = look.findingsOn(element).filter((f) => f.accepted === undefined);
  const size = type.dimension;
  let y = top;
  const items = [...open]
    .sort((a, b) => rankOf(a) - rankOf(b))
    .map((finding, i) => {
      const level = finding.couldNotRun === true ? 'warning' : finding.severity;
      const weight = level === 'danger' ? 'bold' : 'normal';
      const said = look.say.message(
        finding.couldNotRun === true
          ? message('piece.not-checked', { message: finding.message })
          : finding.message,
      );
      const lines = wrap(said, sheetWidth - 2 * margin - 6, size, weight);
      const item = group(
        `finding ${i}`,
        [
          ...badge('mark', level, margin + 2, y + size * 0.62, 3.4),
          ...lines.map((words, n) =>
            text(`line ${n}`, at(margin + 6, y + size + n * size * leading), words, size, {
              weight,
              ...(level === 'danger' ? { tone: 'danger' } : {}),
            }),
          ),
        ],
        { ref: finding.at, name: said },
      );
      y += lines.length * size * leading + 1.4;
      return item;
    });
  return items.length === 0 ? { items, bottom: top } : { items: [group('findings', items)], bottom: y };
}

import { list, message, name } from '@cribwright/messages';
import { at, group, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { leading, margin, sheetWidth, type } from '../sheet/sizes.js';
import type { Say } from '../text/say.js';
import { wrap } from '../text/wrap.js';
import type { Label } from './label.js';

/** Labels that found no room near their shapes, listed under the drawing: none is dropped. */
export function withoutRoom(
  labels: readonly Label[],
  top: number,
  say: Say,
): { readonly items: readonly Item[]; readonly bottom: number } {
  if (labels.length === 0) return { items: [], bottom: top };
  const words = labels.map((l) => [l.name, l.beside, ...l.lines].filter((w) => w !== undefined).join(' '));
  const lines = wrap(
    say.message(message('sheet.no-room', { labels: list(words.map(name), 'groups') })),
    sheetWidth - 2 * margin,
    type.small,
  );
  return {
    items: [
      group(
        'labels without room',
        lines.map((line, i) =>
          text(`line ${i}`, at(margin, top + 3 + i * type.small * leading), line, type.small),
        ),
      ),
    ],
    bottom: top + 3 + lines.length * type.small * leading,
  };
}

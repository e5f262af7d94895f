import { message, name } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { group, line } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { at3 } from '../scene/vector.js';
import type { Placing } from './place-on-sheet.js';

const longest = 13;

/** What stands under each contact pushes up: an arrow below the ground line, as long as the load is large. */
export function loadArrows(look: Look, { toSheet }: Placing): readonly Item[] {
  const now = look.lost ?? (look.choice.stage === undefined ? undefined : look.asBuilt);
  if (now === undefined) return [];
  const before = look.lost === undefined ? undefined : look.asBuilt;
  const most = Math.max(1e-9, ...[...now.reactions, ...(before?.reactions ?? [])].map((r) => r.load.high));
  return now.reactions.map((r) => {
    const tip = toSheet(at3(r.at.x, r.at.y, 0));
    const long = (longest * Math.max(0, r.load.high)) / most;
    const old = before?.reactions.find((o) => o.id === r.id);
    const oldLong = old === undefined ? 0 : (longest * Math.max(0, old.load.high)) / most;
    return group(
      `load ${r.id}`,
      [
        ...(old === undefined
          ? []
          : [
              line(
                'before',
                'ghost',
                { x: tip.x + 1, y: tip.y + oldLong },
                { x: tip.x + 1, y: tip.y },
                { dash: 'dashed' },
              ),
            ]),
        ...(long < 0.2 ? [] : [line('now', 'load', { x: tip.x, y: tip.y + long }, tip, { head: 'arrow' })]),
      ],
      {
        ref: { element: r.element },
        name: look.say.message(
          message('piece.load', { element: r.label, load: name(look.say.force(r.load)) }),
        ),
      },
    );
  });
}

import type { Reaction } from '@cribwright/engine';
import { message, name } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { circle, group } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { at3 } from '../scene/vector.js';
import type { Placing } from './place-on-sheet.js';

const largest = 6;

/**
 * What each contact carries at the moment, as circles whose areas are in the ratio of the loads. With a support
 * lost, a hollow circle shows what the contact carried before.
 */
export function loadMarks(look: Look, { toSheet }: Placing): readonly Item[] {
  const now = look.lost ?? (look.choice.stage === undefined ? undefined : look.asBuilt);
  if (now === undefined) return [];
  const before = look.lost === undefined ? undefined : look.asBuilt;
  const all = [...now.reactions, ...(before?.reactions ?? [])];
  const most = Math.max(1e-9, ...all.map((r) => r.load.high));
  const radius = (r: Reaction) => largest * Math.sqrt(Math.max(0, r.load.high) / most);
  return now.reactions.map((reaction) => {
    const where = toSheet(at3(reaction.at.x, reaction.at.y, 0));
    const old = before?.reactions.find((r) => r.id === reaction.id);
    const holes = { element: reaction.label, load: name(look.say.force(reaction.load)) };
    return group(
      `load ${reaction.id}`,
      [
        ...(old === undefined ? [] : [circle('before', 'ghost', where, radius(old), 'none')]),
        circle('now', 'load', where, Math.max(0.4, radius(reaction)), 'none', 0.6),
      ],
      {
        ref: { element: reaction.element },
        name: look.say.message(
          old === undefined
            ? message('piece.load', holes)
            : message('piece.load-before', { ...holes, before: name(look.say.force(old.load)) }),
        ),
      },
    );
  });
}

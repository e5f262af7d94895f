import { message, name, term } from '@cribwright/messages';
import type { PlacedCrib } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { at, circle, group, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { type } from '../sheet/sizes.js';
import type { Scale } from '../sheet/standard-scale.js';
import { useLevel, useLimit } from './use-level.js';

/** The top two courses from above, with the contacts numbered; each filled by how far its capacity is used. */
export function contactPlan(
  { crib, courses }: PlacedCrib,
  look: Look,
  field: { readonly left: number; readonly top: number; readonly scale: Scale },
): { readonly item: Item; readonly right: number; readonly bottom: number } {
  const k = field.scale.perMeter;
  const { timber } = crib;
  const half = (timber.length / 2) * k;
  const [cx, cy] = [field.left + 6 + half, field.top + 8 + half];
  const timbers = courses.slice(-2).flatMap((course) =>
    course.offsets.map((offset, i) => {
      const wide = timber.width * k;
      const key = `course ${course.number} timber ${i + 1}`;
      return course.runs === 'lengthwise'
        ? rectangle(key, 'timber', cx - half, cy - offset * k - wide / 2, half * 2, wide, 'light')
        : rectangle(key, 'timber', cx + offset * k - wide / 2, cy - half, wide, half * 2, 'light');
    }),
  );
  const contacts = look.support(crib.id)?.contacts ?? [];
  const limit = useLimit(look.plan);
  const radius = Math.max(2.4, (timber.width / 2) * k * 0.92);
  const marks = contacts.map((contact) => {
    const where = at(cx + (contact.at.x - crib.at.x) * k, cy - (contact.at.y - crib.at.y) * k);
    const level = useLevel(contact.use, limit);
    const part = contact.meets === undefined ? term('piece.nothing') : name(contact.meets.part);
    return group(
      `contact ${contact.number}`,
      [
        contact.loaded
          ? circle(
              'ring',
              level.tone,
              where,
              radius,
              level.fill === 'cross' ? 'hatch' : level.fill === 'none' ? 'light' : level.fill,
              0.4,
            )
          : circle('ring', 'ghost', where, radius, 'light', 0.3),
        circle('disc', 'scale', where, 2, 'light', 0.2),
        text('number', at(where.x, where.y + 1.05), String(contact.number), type.dimension, {
          anchor: 'middle',
          weight: 'bold',
        }),
      ],
      {
        ref: crib.ref,
        name: look.say.message(
          message('piece.contact-name', {
            number: name(String(contact.number)),
            part,
            load: name(look.say.figure(contact.load)),
            capacity: name(look.say.figure(contact.capacity)),
            use: name(look.say.figure(contact.use)),
          }),
        ),
      },
    );
  });
  return {
    item: group('contacts from above', [
      text(
        'title',
        at(field.left, field.top + 2),
        look.say.message(term('piece.contacts-from-above')),
        type.label,
        { weight: 'bold' },
      ),
      ...timbers,
      ...marks,
    ]),
    right: cx + half + 4,
    bottom: cy + half + 3,
  };
}

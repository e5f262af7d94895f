import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import { exactly, given } from '@cribwright/model';
import { ratio } from '@cribwright/model/internal';
import type { SupportWorkings } from '../supports/support-workings.js';

/** Why a vehicle that lies on the ground cannot be pushed. */
export const whyNoGrip = term('push.grip-not-known');

/** Friction of a vehicle's own metal on the ground, at the low end of its range. No value where nobody knows it. */
export function bodyFriction(w: SupportWorkings): Figure {
  const { surface } = w.plan.ground;
  const { frictionBody } = surface;
  return given(
    ratio('grip', message('figure.friction-of-body-on', { surface: name(surface.name) }), 'down', {
      ref: surface.ref,
    }),
    frictionBody === undefined ? undefined : exactly(frictionBody.low),
    surface.frictionBodySource ?? { kind: 'unknown' },
  );
}

import { name, term } from '@cribwright/messages';
import type { Capture } from '@cribwright/model';
import type { Yields } from '../bound/shape.js';
import { problem } from '../problems/problem.js';
import type { cribProperties } from '../schema/crib.js';
import { outermost } from './expansion.js';
import type { PropertyValue } from './lowering.js';
import type { LoweringContext } from './lowering-context.js';
import type { PlacedPart } from './placed-vehicles.js';

/** The parts that a support captures, each with which of its contacts meets it. */
export function capturesOf(
  { w, placedVehicles: cast, within }: LoweringContext,
  said: PropertyValue<{ readonly parts: readonly CaptureValues[] }> | undefined,
  element: string,
): readonly (Capture & { readonly placed: PlacedPart })[] {
  const uri = said?.block.uri ?? w.plan.uri;
  const parts = said?.values.parts ?? [];
  return parts.flatMap((p, index) => {
    const placed = cast.part(w, p.vehicle, p.part, within);
    if (!placed) {
      if (p.part.target || within !== outermost) {
        w.report(
          problem('unknown-part--none', p.part.span, {
            text: name(p.part.text),
            vehicle: p.vehicle ? name(p.vehicle.text) : term('place.the-vehicle'),
          }),
          uri,
          within,
        );
      } else w.partial = true;
      return [];
    }
    const pair = p.contacts?.text;
    const contacts =
      pair === undefined
        ? parts.length === 2
          ? ((['outer', 'inner'] as const)[index] ?? 'all')
          : undefined
        : pair === 'all'
          ? 'all'
          : pairs[pair];
    return [
      {
        vehicle: placed.vehicle.id,
        part: placed.part.id,
        ...(contacts === undefined ? {} : { contacts }),
        ref: { element, property: 'captures' },
        placed,
      },
    ];
  });
}

type CaptureValues = Yields<typeof cribProperties.captures>['parts'][number];

const pairs = {
  'outer pair': 'outer',
  'inner pair': 'inner',
  'front pair': 'front',
  'rear pair': 'rear',
} as const;

export const bare = ({ placed: _placed, ...capture }: Capture & { readonly placed: PlacedPart }): Capture =>
  capture;

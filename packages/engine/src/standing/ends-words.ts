import { type Message, message, name, quantity } from '@cribwright/messages';
import type { Ref } from '@cribwright/model';
import { elementMessage } from '../element/element-message.js';
import { nameOf, type SupportWorkings } from '../supports/support-workings.js';
import { pushLimit } from './settings.js';
import type { DirectionPush, VehiclePush } from './standing.js';

/** What ends a push, for a reader, and what of the plan that is. */
export function endsWords(
  w: SupportWorkings,
  { vehicle }: VehiclePush,
  { ends }: DirectionPush,
): { readonly ref: Ref; readonly how: Message } {
  const of = { ref: { element: vehicle } };
  const named = { vehicle: name(nameOf(w, vehicle)) };
  switch (ends?.kind) {
    case undefined:
    case 'cannot stand':
      return { ...of, how: message('standing.nothing-holds', named) };
    case 'rating': {
      const element = elementOf(ends.use.id);
      return {
        ref: { element },
        how: message('standing.reaches-its-rating', { element: elementMessage(w.plan, element) }),
      };
    }
    case 'movement limit':
      return {
        ...of,
        how: message('standing.moves', {
          ...named,
          limit: quantity('length', pushLimit, 'nearest'),
        }),
      };
    case 'plateau':
    case 'drop': {
      const slides = ends.sliding.some((id) => !ends.open.includes(id) && !id.includes('crib/'));
      return { ...of, how: slides ? message('standing.slides', named) : message('standing.tips', named) };
    }
  }
}

/** The element of the plan that something in a scene belongs to: `crib/A` of `crib/A#2/base`. */
export function elementOf(id: string): string {
  const [first = '', second = ''] = id.split('#')[0]?.split('/') ?? [];
  return `${first}/${second}`;
}

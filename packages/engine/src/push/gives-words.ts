import { type Message, message, name } from '@cribwright/messages';
import type { Ref } from '@cribwright/model';
import { elementMessage } from '../element/element-message.js';
import { nameOf, type SupportWorkings } from '../supports/support-workings.js';
import type { Gives } from './what-gives.js';

/** What gives first, for a reader: `strut S1 reaches its rated load`, `the trailer tips over`. */
export function givesWords(
  gives: Gives | undefined,
  w: SupportWorkings,
): { readonly ref: Ref; readonly how: Message } | undefined {
  if (gives === undefined) return undefined;
  const [element = gives.of, contact = ''] = gives.of.split('#');
  const ref = { element };
  const named = (list: readonly { readonly id: string; readonly name: string }[]) =>
    name(list.find((e) => e.id === element)?.name ?? element);
  const crib = () => named(w.plan.cribs);
  const strut = () => named(w.plan.struts);
  const vehicle = () => name(nameOf(w, element));
  switch (gives.kind) {
    case 'strut':
      return { ref, how: message('push.strut-at-rating', { strut: strut() }) };
    case 'tie':
      return { ref, how: message('push.tie-at-rating', { tie: elementMessage(w.plan, element) }) };
    case 'contact':
      return {
        ref,
        how: message('push.contact-at-capacity', { crib: crib(), contact: name(contact) }),
      };
    case 'lean':
      return { ref, how: message('push.crib-leans', { crib: crib() }) };
    case 'foot':
      return { ref: { element, property: 'base' }, how: message('push.base-slides', { strut: strut() }) };
    case 'tips':
      return { ref, how: message('push.tips', { vehicle: vehicle() }) };
    case 'slides':
      return { ref, how: message('push.slides', { vehicle: vehicle() }) };
  }
}

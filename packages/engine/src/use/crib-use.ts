import type { Figure } from '@cribwright/messages';
import { list, message, name, term } from '@cribwright/messages';
import { computed, given } from '@cribwright/model';
import { force, over, share } from '@cribwright/model/internal';
import type { CribWorking } from '../crib/crib-working.js';
import type { LoadWorkings } from '../supports/load-workings.js';

/** A load beside its capacity. */
export interface Use {
  readonly load: Figure;
  readonly capacity: Figure;
  readonly use: Figure;
}

/** Load as a share of capacity. Unknown where either is. */
export const useOf = (load: Figure, capacity: Figure): Figure =>
  computed(
    share('use', term('figure.use-of-capacity'), 'up', { governs: load.governs }),
    over(load.value, capacity.value),
    '{load} ÷ {capacity}',
    { load, capacity },
  );

/** A load that is not known: never zero, never enough. */
export const unknownLoad = (): Figure =>
  given(force('load', term('figure.load'), 'up'), undefined, { kind: 'unknown' });

/** What each contact of a crib carries, and the crib as a whole. */
export function cribUse(
  c: CribWorking,
  w: LoadWorkings,
): { readonly whole: Use; readonly contacts: readonly (Use | undefined)[] } {
  const loads = w.loads();
  const at = (id: string, capacity: Figure): Use => {
    const load = loads.get(id)?.load ?? unknownLoad();
    return { load, capacity, use: useOf(load, capacity) };
  };
  const contacts = c.contacts.map((k) =>
    k.loaded ? at(`${c.crib.id}#${k.number}`, c.contactCapacity) : undefined,
  );
  const whole = at(c.crib.id, c.capacity);
  return { whole: { ...whole, use: governingUse(whole.use, contacts) }, contacts };
}

const same = 1 + 1e-9;

/** The crib is used as hard as its hardest-pressed contact: contacts rarely share alike. */
function governingUse(whole: Figure, contacts: readonly (Use | undefined)[]): Figure {
  let worst = whole;
  contacts.forEach((contact, i) => {
    const use = contact?.use;
    // Contacts that are used alike are told by the first of them.
    if (use?.value === undefined || use.value.high <= (worst.value?.high ?? Number.POSITIVE_INFINITY) * same)
      return;
    const at = message('figure.contact', { contact: name(String(i + 1)) });
    const governs = use.governs === undefined ? at : list([at, use.governs], 'plain');
    worst = { ...use, governs };
  });
  return worst;
}

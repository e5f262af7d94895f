import type { Figure } from '@cribwright/messages';
import type { StrutWorking } from '../strut/strut-working.js';
import type { LoadWorkings } from '../supports/load-workings.js';
import { unknownLoad, useOf } from './crib-use.js';

/** The load along a strut at its worst, beside what it is rated for. */
export function strutUse(s: StrutWorking, w: LoadWorkings): { readonly load: Figure; readonly use: Figure } {
  const load = w.loads().get(s.strut.id)?.load ?? unknownLoad();
  return { load, use: useOf(load, s.capacity) };
}

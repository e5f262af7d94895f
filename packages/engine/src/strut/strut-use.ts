import { unknownLoad, useOf } from '../crib/crib-use.js';
import type { Figure } from '../figure/figure.js';
import type { LoadWorkings } from '../workings/load-workings.js';
import type { StrutWorking } from './strut-working.js';

/** The load along a strut at its worst, beside what it is rated for. */
export function strutUse(s: StrutWorking, w: LoadWorkings): { readonly load: Figure; readonly use: Figure } {
  const load = w.loads().get(s.strut.id)?.load ?? unknownLoad();
  return { load, use: useOf(load, s.capacity) };
}

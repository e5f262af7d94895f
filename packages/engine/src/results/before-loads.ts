import type { SupportResult } from '../analysis/analysis.js';
import type { Workings } from '../derived/workings.js';

const ofLoads: ReadonlySet<string> = new Set(['load', 'use', 'asBuilt', 'bound', 'crushing', 'pressure']);

/** For results that hold figures of geometry beside those of loads: no load is known. */
export const noLoads = (w: Workings): Workings => ({ ...w, loads: () => new Map(), ground: () => [] });

/** A support without the figures that wait for its loads: what waits must not read as "not known". */
export const beforeLoads = (support: SupportResult): SupportResult => ({
  ...support,
  figures: Object.fromEntries(Object.entries(support.figures).filter(([key]) => !ofLoads.has(key))),
  contacts: support.contacts.map(({ asBuilt: _a, bound: _b, ...contact }) => ({
    ...contact,
    load: undefined,
    use: undefined,
  })),
});

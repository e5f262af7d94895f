import { term } from '@cribwright/messages';
import { type Plan, type Support, supportsOf } from '@cribwright/model';
import type { Analysis, LoadCase, SupportResult } from '../analysis/analysis.js';
import { workingsOf } from '../derived/workings.js';
import { buildingStages } from '../loss/building.js';
import { bodyResults } from './body-results.js';

/**
 * What may be said of a plan before any of its checks have run: what there is, what each vehicle weighs, and in
 * which order it is built. It holds no load, no limit and no finding, and says so by `unchecked`: none of it may
 * look as if it were sound.
 */
export function unchecked(plan: Plan): Analysis {
  return {
    unchecked: true,
    plan: { title: plan.title, ref: plan.ref },
    bodies: bodiesOf(plan),
    supports: supportsOf(plan).map(bare),
    stages: buildingStages(plan).map(({ id, title, step, standing, adding }) => ({
      id,
      title,
      step,
      standing,
      adding,
      asBuilt: notWorkedOut,
      losses: [],
    })),
    push: undefined,
    ground: [],
    timeline: undefined,
    materials: undefined,
    findings: [],
    expectations: [],
    assumptions: [],
  };
}

/** Where weights cannot be worked out there are none; the checks say why. */
function bodiesOf(plan: Plan): Analysis['bodies'] {
  try {
    return bodyResults(workingsOf(plan));
  } catch {
    return [];
  }
}

/** Nothing is known to rest. */
const notWorkedOut: LoadCase = {
  id: 'as built',
  title: term('figure.as-built'),
  lost: undefined,
  rests: false,
  free: undefined,
  reactions: [],
  notes: [],
};

const bare = ({ id, name, kind }: Support): SupportResult => ({
  id,
  name,
  kind,
  figures: {},
  contacts: [],
  worst: undefined,
});

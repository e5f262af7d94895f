import { cribUse } from '../crib/crib-use.js';
import type { CribWorking } from '../crib/crib-working.js';
import { renamed } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import type { Finding } from '../finding/finding.js';
import type { Plan } from '../model/plan.js';
import { rules } from '../rules/generated/rule-index.js';
import { bySeverity, runRules } from '../rules/run.js';
import type { StrutWorking } from '../strut/strut-working.js';
import { type AnalyzeOptions, type Workings, workingsOf } from '../workings/workings.js';
import type { Analysis, BodyResult, SupportResult } from './analysis.js';
import { assumptions } from './assumptions.js';

/**
 * All that the engine has to say about a plan. Never throws on a plan, however wrong: what could not be worked out
 * is said in a finding.
 */
export function analyze(plan: Plan, options: AnalyzeOptions = {}): Analysis {
  const w = workingsOf(plan, options);
  const findings = [...runRules(rules, w)].sort(bySeverity);
  return {
    plan: { title: plan.title, ref: plan.ref },
    bodies: attempt(() => bodies(w), []),
    supports: attempt(() => supports(w, findings), []),
    stages: attempt(() => w.stages(), []),
    push: undefined,
    ground: [],
    timeline: undefined,
    materials: undefined,
    findings,
    expectations: [],
    assumptions,
  };
}

/** Results that break are left out; the rule that needs the same part has already said so as a finding. */
function attempt<T>(make: () => T, without: T): T {
  try {
    return make();
  } catch {
    return without;
  }
}

const bodies = (w: Workings): readonly BodyResult[] =>
  w.plan.vehicles.flatMap((vehicle) => {
    const mass = w.masses().get(vehicle.id);
    return mass === undefined
      ? []
      : [
          {
            vehicle: vehicle.id,
            name: vehicle.name,
            weight: mass.weight,
            centre: { x: mass.x, y: mass.y, z: mass.z },
          },
        ];
  });

function supports(w: Workings, findings: readonly Finding[]): readonly SupportResult[] {
  const { plan } = w;
  const worst = (id: string) => findings.find((f) => f.subject.element === id)?.severity;
  const plain = (s: { readonly id: string; readonly name: string }, kind: SupportResult['kind']) => ({
    id: s.id,
    name: s.name,
    kind,
    figures: {},
    contacts: [],
    worst: worst(s.id),
  });
  return [
    ...w.cribs().map((c) => ({ ...cribResult(c, w), worst: worst(c.crib.id) })),
    ...w.struts().map((s) => ({ ...strutResult(s), worst: worst(s.strut.id) })),
    ...plan.stepChocks.map((s) => plain(s, 'step chock')),
    ...plan.ties.map((s) => plain(s, 'tie')),
    ...plan.chocks.map((s) => plain(s, 'chock')),
    ...plan.pads.map((s) => plain(s, 'pad')),
  ];
}

const byKey = (figures: readonly Figure[]) => Object.fromEntries(figures.map((f) => [f.key, f]));

function cribResult(c: CribWorking, w: Workings): Omit<SupportResult, 'worst'> {
  const uses = cribUse(c, w);
  return {
    id: c.crib.id,
    name: c.crib.name,
    kind: 'crib',
    figures: byKey([
      c.height,
      c.heightLimit,
      c.capacity,
      uses.whole.load,
      uses.whole.use,
      c.width,
      c.overhang,
      c.gap,
    ]),
    contacts: c.contacts.map((contact, i) => ({
      number: contact.number,
      at: { x: contact.x, y: contact.y, z: c.height.value?.high ?? 0 },
      meets:
        contact.meets === undefined
          ? undefined
          : { vehicle: contact.meets.vehicle.id, part: contact.meets.part.id },
      loaded: contact.loaded,
      load: uses.contacts[i]?.load,
      capacity: renamed(c.contactCapacity, { key: 'capacity' }),
      use: uses.contacts[i]?.use,
    })),
  };
}

const strutResult = (s: StrutWorking): Omit<SupportResult, 'worst'> => ({
  id: s.strut.id,
  name: s.strut.name,
  kind: 'strut',
  figures: byKey([s.angle, s.length, s.capacity]),
  contacts: [],
});

import type { Figure } from '@cribwright/messages';
import type { ElementId, Support, SupportKind } from '@cribwright/model';
import { renamed } from '@cribwright/model';
import type { SupportResult } from '../analysis/analysis.js';
import type { CribWorking } from '../crib/crib-working.js';
import type { StepChockWorking } from '../crib/step-chock-working.js';
import { wedgeFigures } from '../crib/wedge-figures.js';
import type { Workings } from '../derived/workings.js';
import type { Finding, Severity } from '../finding/finding.js';
import type { StrutWorking } from '../strut/strut-working.js';
import type { TieWorking } from '../strut/tie-working.js';
import { cribUse, unknownLoad, useOf } from '../use/crib-use.js';
import { crushing } from '../use/crushing.js';
import { strutUse } from '../use/strut-use.js';
import { tieUse } from '../use/tie-use.js';

/** Every support with its figures, contacts and worst finding. */
export function supportResults(w: Workings, findings: readonly Finding[]): readonly SupportResult[] {
  const { plan } = w;
  const pressures = new Map(w.ground().map((g) => [g.element, g.pressure]));
  const worst = worstOn(findings);
  const bare = ({ id, name, kind }: Support): Unjudged => ({ id, name, kind, figures: {}, contacts: [] });
  const results: Readonly<Record<SupportKind, () => readonly Unjudged[]>> = {
    crib: () => w.cribs().map((c) => cribResult(c, w, pressures.get(c.crib.id))),
    'step chock': () => w.stepChocks().map((s) => stepChockResult(s, w)),
    strut: () => w.struts().map((s) => strutResult(s, w, pressures.get(s.strut.id))),
    tie: () => w.ties().map((t) => tieResult(t, w)),
    chock: () => plan.chocks.map(bare),
    pad: () => plan.pads.map(bare),
  };
  return Object.values(results).flatMap((of) => of().map((s) => ({ ...s, worst: worst.get(s.id) })));
}

type Unjudged = Omit<SupportResult, 'worst'>;

const ranks: readonly Severity[] = ['danger', 'warning', 'note'];

/** The worst severity of what was found on each element. */
function worstOn(findings: readonly Finding[]): ReadonlyMap<ElementId, Severity> {
  const worst = new Map<ElementId, Severity>();
  for (const severity of ranks.toReversed())
    for (const f of findings) if (f.severity === severity) worst.set(f.subject.element, severity);
  return worst;
}

const byKey = (figures: readonly (Figure | undefined)[]) =>
  Object.fromEntries(figures.flatMap((f) => (f === undefined ? [] : [[f.key, f]])));

const asBuilt = (id: ElementId, w: Workings): Figure | undefined => {
  const figure = w.loads().get(id)?.asBuilt;
  return figure && renamed(figure, { key: 'asBuilt' });
};

const bound = (id: ElementId, w: Workings): Figure | undefined => {
  const figure = w.loads().get(id)?.bound;
  return figure && renamed(figure, { key: 'bound' });
};

function cribResult(c: CribWorking, w: Workings, pressure: Figure | undefined): Unjudged {
  // Before the loads are there, what hangs on them is left out.
  const uses = w.options.loads === false ? undefined : cribUse(c, w);
  const { base, heightWithShims } = c.placed;
  return {
    id: c.crib.id,
    name: c.crib.name,
    kind: 'crib',
    figures: byKey([
      c.height,
      c.heightLimit,
      c.capacity,
      uses?.whole.load,
      uses?.whole.use,
      asBuilt(c.crib.id, w),
      bound(c.crib.id, w),
      c.width,
      c.overhang,
      c.gap,
      uses && crushing(c, w),
      ...wedgeFigures(c.crib, w.plan),
      pressure,
    ]),
    contacts: c.contacts.map((contact, i) => ({
      number: contact.number,
      at: { x: contact.x, y: contact.y, z: (base?.low ?? 0) + heightWithShims },
      meets:
        contact.meets === undefined
          ? undefined
          : { vehicle: contact.meets.vehicle.id, part: contact.meets.part.id },
      loaded: contact.loaded,
      load: uses?.contacts[i]?.load,
      asBuilt: w.loads().get(`${c.crib.id}#${contact.number}`)?.asBuilt,
      bound: w.loads().get(`${c.crib.id}#${contact.number}`)?.bound,
      capacity: renamed(c.contactCapacity, { key: 'capacity' }),
      use: uses?.contacts[i]?.use,
    })),
  };
}

function stepChockResult(s: StepChockWorking, w: Workings): Unjudged {
  const load = w.loads().get(s.chock.id)?.load ?? unknownLoad();
  return {
    id: s.chock.id,
    name: s.chock.name,
    kind: 'step chock',
    figures: byKey([
      s.height,
      s.capacity,
      load,
      useOf(load, s.capacity),
      s.gap,
      asBuilt(s.chock.id, w),
      bound(s.chock.id, w),
    ]),
    contacts: [],
  };
}

function strutResult(s: StrutWorking, w: Workings, pressure: Figure | undefined): Unjudged {
  const { load, use } = strutUse(s, w);
  return {
    id: s.strut.id,
    name: s.strut.name,
    kind: 'strut',
    figures: byKey([
      s.angle,
      s.length,
      s.capacity,
      load,
      use,
      asBuilt(s.strut.id, w),
      bound(s.strut.id, w),
      s.slenderness,
      pressure,
    ]),
    contacts: [],
  };
}

function tieResult(t: TieWorking, w: Workings): Unjudged {
  const { load, use } = tieUse(t, w);
  return {
    id: t.tie.id,
    name: t.tie.name,
    kind: 'tie',
    figures: byKey([t.capacity, load, use, t.length]),
    contacts: [],
  };
}

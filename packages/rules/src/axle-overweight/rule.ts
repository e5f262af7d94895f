import type { Workings } from '@cribwright/engine';
import { type AxleGroup, axleGroups } from '@cribwright/engine';
import { blameFor, type Carrier, combination, groupLoad, leads } from '@cribwright/engine/internal';
import type { Figure } from '@cribwright/messages';
import { inWords, type Message, message, name, count as numberOf, shown, term } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { computed, exactly, measured } from '@cribwright/model';
import { force, place } from '@cribwright/model/internal';
import { exceeds, foot, poundForce } from '@cribwright/units';
import { published, type Rule, type RuleFinding } from '../definition/rule.js';

const law = '23 CFR 658.17';
const reasons: Readonly<Record<AxleGroup['by'], Message>> = {
  single: term('axle-overweight.by-single'),
  tandem: term('axle-overweight.by-tandem'),
  'bridge formula': term('axle-overweight.by-bridge-formula'),
  'two tandems 36 ft apart': term('axle-overweight.by-two-tandems'),
  gross: term('axle-overweight.by-gross'),
};

function check(w: Workings): readonly RuleFinding[] {
  return leads(w.plan).flatMap((lead): readonly RuleFinding[] => {
    const carriers = combination(lead, w.plan);
    if (carriers === undefined) return [notTold(lead)];
    // A trailer that stands without a tractor: its kingpin is no axle, and breaks no rule.
    return overIn(
      carriers.filter((c) => c.axle),
      w,
    );
  });
}

const notTold = (vehicle: Vehicle): RuleFinding => ({
  severity: 'note',
  subject: { element: vehicle.id },
  at: { element: vehicle.id },
  message: message('axle-overweight.unknown', { vehicle: name(vehicle.name) }),
  couldNotRun: true,
});

function overIn(axles: readonly Carrier[], w: Workings): readonly RuleFinding[] {
  const pounds = (key: 'axle limit single' | 'axle limit tandem' | 'gross limit') =>
    (w.limit(key).value?.low ?? Number.POSITIVE_INFINITY) / poundForce;
  const limits = {
    single: pounds('axle limit single'),
    tandem: pounds('axle limit tandem'),
    gross: pounds('gross limit'),
  };
  const groups = axleGroups(
    axles.map((a) => ({ at: a.at / foot, load: 0 })),
    limits,
  );
  // Over wherever the cargo may lie, not just at its worst place: then something is wrong in what was written.
  const over = groups.filter((g) => exceeds(groupLoad(within(g, axles)).low, g.limit * poundForce));
  // A group that holds a smaller one that is over says nothing new; the whole truck does.
  const telling = over.filter(
    (g) =>
      (g.by === 'gross' && g.last - g.first === axles.length - 1) ||
      !over.some((o) => o !== g && o.first >= g.first && o.last <= g.last),
  );
  return telling.flatMap((group) => finding(group, within(group, axles), w));
}

const within = (group: AxleGroup, axles: readonly Carrier[]) => axles.slice(group.first - 1, group.last);

function finding(group: AxleGroup, axles: readonly Carrier[], w: Workings): readonly RuleFinding[] {
  const [first] = axles;
  const last = axles.at(-1);
  if (first === undefined || last === undefined) return [];
  const load = loadFigure(axles);
  const limit = limitFigure(group, axles, w);
  const named = (c: Carrier) => name(`${w.vehicles.get(c.vehicle)?.name ?? ''} ${c.name}`.trim());
  const shared = { load: shown(load), limit: shown(limit), by: reasons[group.by] };
  const set = limit.ref ?? limit.inputs.find((f) => f.ref !== undefined)?.ref;
  return [
    {
      subject: { element: first.vehicle },
      at: blameFor(axles, group.limit * poundForce) ?? first.ref,
      message:
        axles.length === 1
          ? message('axle-overweight.one-over', { ...shared, axle: named(first) })
          : message('axle-overweight.over', { ...shared, first: named(first), last: named(last) }),
      figures: [load, limit],
      related:
        set === undefined
          ? []
          : [{ at: set, message: message('axle-overweight.limit-set-here', { limit: shown(limit) }) }],
      governs: term('figure.cargo-at-its-heaviest-wherever-it-may'),
    },
  ];
}

function loadFigure(axles: readonly Carrier[]): Figure {
  const inputs = axles.map((a) =>
    measured(
      force('axleLoad', message('figure.with-cargo', { carrier: name(a.name) }), 'up', { ref: a.ref }),
      groupLoad([a]),
      term('figure.its-load-empty-its-share-of-the'),
    ),
  );
  return computed(
    force('groupLoad', term('figure.load-on-these-axles'), 'up', {
      assumes: [term('figure.cargo-bears-on-two-groups-of-axles')],
    }),
    groupLoad(axles),
    inputs.map((_, i) => `{a${i}}`).join(' + '),
    Object.fromEntries(inputs.map((f, i) => [`a${i}`, f])),
  );
}

const keys = { single: 'axle limit single', tandem: 'axle limit tandem', gross: 'gross limit' } as const;

function limitFigure(group: AxleGroup, axles: readonly Carrier[], w: Workings): Figure {
  if (group.by === 'single' || group.by === 'tandem' || group.by === 'gross') return w.limit(keys[group.by]);
  const head = force('groupLimit', term('figure.legal-limit'), 'down');
  const value = exactly(group.limit * poundForce);
  if (group.by === 'two tandems 36 ft apart') {
    const tandem = w.limit('axle limit tandem');
    return computed(head, value, '2 × {tandem}', { tandem }, published('23 U.S.C. 127(a)'));
  }
  const spread = measured(
    place('spread', term('figure.first-to-last-axle'), 'nearest'),
    exactly((axles.at(-1)?.at ?? 0) - (axles[0]?.at ?? 0)),
    term('figure.place-of-the-last-axle-place-of'),
  );
  return measured(
    head,
    value,
    message('figure.bridge-formula', { spread: inWords(spread), axles: numberOf(axles.length) }),
    published(law, '(e), bridge formula, to the nearest 500 lb'),
  );
}

export const rule: Rule = {
  id: 'axle-overweight',
  title: term('axle-overweight.title'),
  family: 'plausibility',
  severity: 'warning',
  judges: 'plan',
  protects: term('axle-overweight.protects'),
  sources: [published(law), published('23 U.S.C. 127(a)', 'two consecutive sets of tandem axles')],
  compares: ['groupLoad', 'groupLimit'],
  check,
};

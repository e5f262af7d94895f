import type { Figure, Phrase } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import type { Met, Ref } from '@cribwright/model';
import { computed, partNamed } from '@cribwright/model';
import { force, plus } from '@cribwright/model/internal';
import type { CribWorking } from '../crib/crib-working.js';
import { elementMessage } from '../element/element-message.js';
import type { LoadWorkings } from '../supports/load-workings.js';
import { unknownLoad } from './crib-use.js';

/** What one support, or one vehicle that rests there, puts on a part of a vehicle. */
export interface PartLoad {
  readonly part: Met['part'];
  readonly vehicle: Met['vehicle'];
  readonly by: 'captures' | 'stands on' | 'head' | 'rests on' | 'bears on' | 'carries';
  readonly support: Phrase;
  readonly subject: Ref;
  readonly at: Ref;
  /** The worst. Never less than what all its contacts on the part carry at once. */
  readonly load: Figure;
  readonly asBuilt: Figure;
}

/** Every load that the plan puts on a named part: from cribs, step chocks, struts, vehicles and the ground. */
export function partLoads(w: LoadWorkings): readonly PartLoad[] {
  return [
    ...w.cribs().flatMap((c) => [...capturedBy(c, w), ...under(c.crib, w)]),
    ...w
      .stepChocks()
      .flatMap(({ chock, meets }) => [
        ...(meets?.hit === true
          ? [{ ...onPart(meets, chock.id, 'captures', w), ...whole(chock.id, w) }]
          : []),
        ...under(chock, w),
      ]),
    ...w.struts().flatMap(({ strut }) => named(strut.head.vehicle, strut.head.part, strut.id, 'head', w)),
    ...w.plan.contacts.flatMap((c) => {
      const ids = c.points.map((_, i) => `${c.id}#${i + 1}`);
      const loads = sumOf(ids, w);
      const end = (vehicle: string, part: string | undefined, by: 'rests on' | 'bears on', other: string) =>
        named(vehicle, part, other, by, w).map((p) => ({
          ...p,
          ...loads,
          subject: { element: vehicle },
          at: c.ref,
        }));
      return [
        ...end(c.lower, c.lowerPart, 'rests on', c.upper),
        ...end(c.upper, c.upperPart, 'bears on', c.lower),
      ];
    }),
    ...w.plan.vehicles.flatMap((vehicle) =>
      vehicle.parts.flatMap((part) => {
        const ids = [...w.loads().keys()].filter((id) => id.startsWith(`${vehicle.id}/${part.id}/`));
        return ids.map((id) => ({ ...onPart({ part, vehicle }, vehicle.id, 'carries', w), ...whole(id, w) }));
      }),
    ),
  ];
}

type On = Pick<Met, 'part' | 'vehicle'>;

const onPart = ({ part, vehicle }: On, element: string, by: PartLoad['by'], w: LoadWorkings) => ({
  part,
  vehicle,
  by,
  support: elementMessage(w.plan, element),
  subject: { element },
  at: by === 'captures' || by === 'stands on' || by === 'head' ? { element, property: by } : { element },
});

const whole = (id: string, w: LoadWorkings) => {
  const found = w.loads().get(id);
  return { load: found?.load ?? unknownLoad(), asBuilt: found?.asBuilt ?? unknownLoad() };
};

function named(
  vehicleId: string,
  partId: string | undefined,
  element: string,
  by: PartLoad['by'],
  w: LoadWorkings,
): readonly PartLoad[] {
  const vehicle = w.vehicles.get(vehicleId);
  const part = vehicle && partId !== undefined ? partNamed(vehicle, partId) : undefined;
  return vehicle === undefined || part === undefined
    ? []
    : [{ ...onPart({ part, vehicle }, element, by, w), ...whole(element, w) }];
}

/** What a crib or step chock stands on, where that is a part of a vehicle. */
function under(support: CribWorking['crib'] | LoadWorkings['plan']['stepChocks'][number], w: LoadWorkings) {
  const { standsOn } = support;
  return standsOn.kind === 'vehicle'
    ? named(standsOn.vehicle, standsOn.part, support.id, 'stands on', w)
    : [];
}

/** The parts that a crib captures, each with what the contacts under it carry. */
function capturedBy(c: CribWorking, w: LoadWorkings): readonly PartLoad[] {
  const loaded = c.contacts.flatMap(({ number, meets }) => (meets === undefined ? [] : [{ number, meets }]));
  const met = new Map(loaded.map(({ meets }) => [`${meets.vehicle.id}/${meets.part.id}`, meets]));
  return [...met].map(([key, m]) => {
    const ids = loaded
      .filter(({ meets }) => `${meets.vehicle.id}/${meets.part.id}` === key)
      .map((k) => `${c.crib.id}#${k.number}`);
    const all = ids.length === loaded.length;
    return {
      ...onPart(m, c.crib.id, 'captures', w),
      ...(all ? whole(c.crib.id, w) : sumOf(ids, w)),
    };
  });
}

/** Reactions together: each at its worst, so that the sum is never less than what they carry at once. */
function sumOf(ids: readonly string[], w: LoadWorkings): { readonly load: Figure; readonly asBuilt: Figure } {
  const [only] = ids;
  if (ids.length === 1 && only !== undefined) return whole(only, w);
  return {
    load: sumOfLoads(
      'load',
      ids.map((id) => whole(id, w).load),
    ),
    asBuilt: sumOfLoads(
      'asBuilt',
      ids.map((id) => whole(id, w).asBuilt),
    ),
  };
}

/** Loads added up. Unknown where one is. */
export function sumOfLoads(key: 'load' | 'asBuilt', loads: readonly Figure[]): Figure {
  const inputs = Object.fromEntries(loads.map((f, i) => [`n${i + 1}`, f]));
  const value = loads
    .map((f) => f.value)
    .reduce((total, next) => (total === undefined || next === undefined ? undefined : plus(total, next)));
  const head = key === 'load' ? term('figure.load') : term('figure.load-as-built');
  return computed(
    force(key, head, 'up', { governs: loads.find((f) => f.governs !== undefined)?.governs }),
    value,
    Object.keys(inputs)
      .map((k) => `{${k}}`)
      .join(' + '),
    inputs,
  );
}

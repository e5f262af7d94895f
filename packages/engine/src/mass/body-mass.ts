import type { Figure, SourceNote } from '@cribwright/messages';
import { inWords, type Message, message, term, name as verbatim } from '@cribwright/messages';
import type { Cargo, Ref, Vehicle } from '@cribwright/model';
import { add, computed, exactly, given, type Interval, measured } from '@cribwright/model';
import { force, place, posedCenter, sourceOfPart, unitWeight, volume } from '@cribwright/model/internal';
import { type Weighed, weightedMean } from './weighted-mean.js';

/** Weight and center of gravity of a whole vehicle, cargo included; cab too. Vehicle axes. */
export interface BodyMass {
  readonly weight: Figure;
  readonly x: Figure;
  readonly y: Figure;
  readonly z: Figure;
}

interface Share extends Weighed {
  readonly figure: Figure;
}

const alike = term('figure.empty-vehicle-weighs-the-same-on-both-sides');
const thirds = term('figure.cargo-center-in-the-middle-third');

/**
 * Where the center of a load lies along the vehicle: as stated, else within the middle third of its length. One that may
 * shift, or a liquid that surges, may come to rest or stand anywhere in its bay, wherever it lies now: how full the bay is
 * is not in the plan.
 */
export const cargoCenter = ({ center, from, to, shifts }: Cargo): Interval =>
  shifts ? { low: from, high: to } : (center ?? { low: from + (to - from) / 3, high: to - (to - from) / 3 });

/** Where it lies across: as stated, or anywhere from side wall to side wall where it may shift. */
export const cargoOffset = ({ offset, shifts }: Cargo, { width }: Pick<Vehicle, 'width'>): Interval =>
  shifts ? { low: Math.min(offset.low, -width / 2), high: Math.max(offset.high, width / 2) } : offset;

/** What carries the empty vehicle, with the load it carries: axles, a kingpin, landing gear. */
function emptyShares(vehicle: Vehicle): readonly Share[] {
  const figure = (key: string, load: Interval, ref: Ref, source: SourceNote) =>
    given(force(key, message('figure.empty', { carrier: verbatim(key) }), 'up', { ref }), load, source);
  const axles = vehicle.axles.map((a) => ({
    weight: a.emptyLoad,
    at: exactly(a.x),
    figure: figure(a.name, a.emptyLoad, a.ref, a.emptyLoadSource ?? vehicle.source),
  }));
  const parts = vehicle.parts.flatMap((p) => {
    const load = p.carries?.emptyLoad;
    return load === undefined
      ? []
      : [
          {
            weight: load,
            at: exactly(p.form === 'points' ? p.from : (p.from + p.to) / 2),
            figure: figure(p.name, load, p.ref, sourceOfPart({ part: p, vehicle }, 'carries')),
          },
        ];
  });
  return [...axles, ...parts];
}

const total = (items: readonly { readonly weight: Interval }[]): Interval | undefined =>
  items.length === 0 ? undefined : items.map((i) => i.weight).reduce(add);

const sumOf = (figures: readonly Figure[]) => ({
  formula: figures.map((_, i) => `{i${i}}`).join(' + '),
  inputs: Object.fromEntries(figures.map((f, i) => [`i${i}`, f])),
});

/** The empty vehicle's weight: as stated, else the sum of what its axles (and kingpin) carry. */
export function emptyWeight(vehicle: Vehicle): Figure {
  const head = force('emptyWeight', term('figure.empty-weight'), 'up');
  if (vehicle.statedWeight !== undefined)
    return given(
      { ...head, ref: { element: vehicle.id, property: 'weight' } },
      vehicle.statedWeight,
      vehicle.statedWeightSource ?? { kind: 'stated' },
    );
  const shares = emptyShares(vehicle);
  const { formula, inputs } = sumOf(shares.map((s) => s.figure));
  return computed(head, total(shares), formula, inputs);
}

/** What a load weighs: as stated, or by how much there is of what. */
function cargoWeight({ name, weight, byVolume, ref }: Cargo): Figure {
  const head = force('cargo', verbatim(name), 'up', { ref });
  if (byVolume === undefined) return given(head, weight, { kind: 'stated' });
  return computed(head, weight, '{volume} × {unitWeight}', {
    volume: given(volume('volume', term('figure.volume'), 'up', { ref }), byVolume.volume, {
      kind: 'stated',
    }),
    unitWeight: given(
      unitWeight('unitWeight', term('figure.weight-per-volume'), 'up'),
      byVolume.unitWeight,
      byVolume.source,
    ),
  });
}

/** Weight and center of gravity with all cargo, over the box of weights and places. */
export function bodyMass(vehicle: Vehicle): BodyMass {
  const empty = emptyWeight(vehicle);
  const cargo = vehicle.cargo.map(cargoWeight);
  const all = [empty, ...cargo];
  const { formula, inputs } = sumOf(all);
  const weight = computed(
    force('weight', term('figure.weight'), 'up', { governs: governsWeight(all) }),
    all.every((f) => f.value !== undefined)
      ? total(all.flatMap((f) => (f.value === undefined ? [] : [{ weight: f.value }])))
      : undefined,
    formula,
    inputs,
  );
  const shares = emptyShares(vehicle);
  const axis = (name: 'x' | 'y' | 'z', label: Message, own: Interval | undefined, at: (c: Cargo) => Known) =>
    centerFigure(vehicle, { name, label, own, at, empty, cargo });
  const stated = vehicle.statedCenter;
  const lying = {
    weight,
    x: axis(
      'x',
      term('figure.center-of-gravity-back-from-the-front'),
      stated?.x ?? weightedMean(shares),
      cargoCenter,
    ),
    y: axis('y', term('figure.center-of-gravity-toward-the-passenger-side'), stated?.y ?? exactly(0), (c) =>
      cargoOffset(c, vehicle),
    ),
    z: axis(
      'z',
      term('figure.center-of-gravity-above-the-ground'),
      stated?.z ?? vehicle.emptyCenterHeight,
      (c) => c.height,
    ),
  };
  return vehicle.position.kind === 'upright' || vehicle.position.kind === 'pitched'
    ? lying
    : turned(lying, vehicle);
}

/** The center across and up of a vehicle that lies on its side or roof, from where it is as the vehicle stands. */
function turned(standing: BodyMass, vehicle: Vehicle): BodyMass {
  const { y, z } = posedCenter(vehicle, standing.y.value, standing.z.value);
  const how = message('figure.turned', {
    across: inWords(standing.y),
    up: inWords(standing.z),
    lies: term(vehicle.position.kind === 'on its roof' ? 'figure.roof-resting' : 'figure.side-resting'),
  });
  return {
    ...standing,
    y: measured(place('y', standing.y.label, 'nearest'), y, how),
    z: measured(place('z', standing.z.label, 'nearest'), z, how),
  };
}

type Known = Interval | undefined;

const governsWeight = (all: readonly Figure[]) =>
  all.some((f) => f.value !== undefined && f.value.low !== f.value.high)
    ? term('figure.the-heavy-end')
    : undefined;

function centerFigure(
  vehicle: Vehicle,
  spec: {
    readonly name: 'x' | 'y' | 'z';
    readonly label: Message;
    readonly own: Known;
    readonly at: (c: Cargo) => Known;
    readonly empty: Figure;
    readonly cargo: readonly Figure[];
  },
): Figure {
  const { name, label, own, at, empty, cargo } = spec;
  const items: (Weighed | undefined)[] = [
    empty.value === undefined || own === undefined ? undefined : { weight: empty.value, at: own },
    ...vehicle.cargo.map((c) => {
      const where = at(c);
      return where === undefined ? undefined : { weight: c.weight, at: where };
    }),
  ];
  const known = items.filter((i) => i !== undefined);
  const value = known.length === items.length ? weightedMean(known) : undefined;
  const inputs: Record<string, Figure> = { w0: empty };
  inputs.a0 = emptyCenter(vehicle, name, own);
  vehicle.cargo.forEach((c, i) => {
    const figure = cargo[i];
    if (figure === undefined) return;
    inputs[`w${i + 1}`] = figure;
    const where = (assumes?: readonly Message[]) =>
      place('place', message('figure.center-of', { cargo: verbatim(c.name) }), 'nearest', {
        ref: c.ref,
        assumes,
      });
    inputs[`a${i + 1}`] =
      c.shifts && name !== 'z'
        ? measured(where(), at(c), term('figure.anywhere-in-its-bay'))
        : name === 'x' && c.center === undefined
          ? measured(where([thirds]), at(c), term('figure.middle-third-of-the-length-it-lies'))
          : given(where(), at(c), { kind: 'stated' });
  });
  const n = Array.from({ length: vehicle.cargo.length + 1 }, (_, i) => i);
  const formula = `(${n.map((i) => `{w${i}} × {a${i}}`).join(' + ')}) ÷ (${n.map((i) => `{w${i}}`).join(' + ')})`;
  return computed(
    place(name, label, 'nearest', {
      assumes:
        name === 'x' && vehicle.cargo.some((c) => c.center === undefined && !c.shifts) ? [thirds] : undefined,
    }),
    value,
    formula,
    inputs,
  );
}

/** Where the center of the empty vehicle is, and how that is known. */
function emptyCenter(vehicle: Vehicle, name: 'x' | 'y' | 'z', own: Known): Figure {
  const head = place('place', term('figure.center-of-the-empty-vehicle'), 'nearest');
  if (vehicle.statedCenter !== undefined) return given(head, own, { kind: 'stated' });
  switch (name) {
    case 'x':
      return measured(head, own, term('figure.middle-of-what-its-axles-and-kingpin'));
    case 'y':
      return measured({ ...head, assumes: [alike] }, own, term('figure.on-its-center-line'));
    case 'z':
      return given(head, own, own === undefined ? { kind: 'unknown' } : vehicle.source);
  }
}

import type { CribWorking } from '../crib/crib-working.js';
import { carries, type StepChockWorking } from '../crib/step-chock-working.js';
import { crossingStiffness } from '../crib/stiffness.js';
import type { Plan } from '../model/plan.js';
import type { ElementId, Ref } from '../model/ref.js';
import type { Strut } from '../model/support.js';
import type { Part, Vehicle } from '../model/vehicle.js';
import { toPlan } from '../vehicle/frame.js';
import { underside } from '../vehicle/underside.js';
import type { Workings } from './workings.js';

/** A place where one body rests on another or on the ground, as a one-way spring. Plan axes, SI. */
export interface SupportPoint {
  /** The id of its reaction: `crib/A#1`, `vehicle/trailer/axle 2/driver`. */
  readonly id: string;
  /** The element that it belongs to, and that is lost when it gives way. */
  readonly element: ElementId;
  readonly label: string;
  readonly kind: 'tyre' | 'part' | 'body' | 'vehicle' | 'cab mount' | 'crib' | 'step chock' | 'strut';
  /** There before the crew. */
  readonly original: boolean;
  /** Points that are lost together: an axle's air springs, both tyres of a pair. */
  readonly group: string;
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
  readonly upper: ElementId;
  readonly lower: ElementId | 'ground';
  /** Vertical, N/m. */
  readonly stiffness: number;
  /** N, closed with when placed. */
  readonly preload: number;
  readonly ref: Ref;
}

/** A cab on springs is a body of its own. */
export const cabBody = (vehicle: Vehicle): ElementId => `${vehicle.id}/cab`;

/** The body that a part belongs to: the cab for moving parts within its length, else the vehicle. */
export const bodyOfPart = (vehicle: Vehicle, part: Part): ElementId =>
  vehicle.cab !== undefined &&
  part.moves &&
  part.from >= vehicle.cab.from - 1e-6 &&
  part.to <= vehicle.cab.to + 1e-6
    ? cabBody(vehicle)
    : vehicle.id;

const sides = ['driver', 'passenger'] as const;

/** What held the vehicles up before the crew came. */
export function originalSupports(plan: Plan): readonly SupportPoint[] {
  return [
    ...plan.vehicles.flatMap((v) => ownSupports(v, plan)),
    ...plan.contacts.flatMap((c) => vehicleContacts(c, plan)),
  ];
}

function ownSupports(vehicle: Vehicle, plan: Plan): readonly SupportPoint[] {
  // A part that rests on another vehicle of the plan is held there, and not a second time by the ground.
  const onVehicle = (part: Part) =>
    plan.contacts.some((c) => c.upper === vehicle.id && c.upperPart === part.id);
  const tyres = lies(vehicle)
    ? []
    : vehicle.axles.flatMap((axle) =>
        sides
          .filter((side) => !axle.missing.includes(side))
          .map((side): SupportPoint => {
            const at = toPlan(vehicle, {
              x: axle.x,
              y: (side === 'driver' ? -1 : 1) * (axle.track / 2),
            });
            return {
              id: `${vehicle.id}/${axle.id}/${side}`,
              element: vehicle.id,
              label: `${vehicle.name} ${axle.name}, ${side} side`,
              kind: 'tyre',
              original: true,
              group: `${vehicle.id}/${axle.id}`,
              at: { ...at, z: 0 },
              upper: vehicle.id,
              lower: 'ground',
              stiffness: axle.stiffness,
              preload: 0,
              ref: axle.ref,
            };
          }),
      );
  const parts = vehicle.parts.flatMap((part) =>
    part.carries?.down === true && !onVehicle(part) && !lies(vehicle)
      ? part.offsets.map((y, i): SupportPoint => {
          const at = toPlan(vehicle, { x: part.from, y });
          const side = part.offsets.length < 2 ? '' : y < 0 ? 'driver' : 'passenger';
          return {
            id: [vehicle.id, part.id, side || `${i + 1}`].join('/'),
            element: vehicle.id,
            label: [vehicle.name, part.name, side && `${side} side`].filter(Boolean).join(' '),
            kind: 'part',
            original: true,
            group: `${vehicle.id}/${part.id}`,
            at: {
              ...at,
              z: underside(vehicle, part, at).low,
            },
            upper: vehicle.id,
            lower: 'ground',
            stiffness: part.carries?.stiffness ?? 0,
            preload: 0,
            ref: part.ref,
          };
        })
      : [],
  );
  const mounts = (vehicle.cab?.mounts ?? []).flatMap((mount) =>
    mount.offsets.map((y): SupportPoint => {
      const at = toPlan(vehicle, { x: mount.x, y });
      const side = y < 0 ? 'driver' : 'passenger';
      return {
        id: `${cabBody(vehicle)}/${mount.name}/${side}`,
        element: vehicle.id,
        label: `${vehicle.name} cab ${mount.name}, ${side} side`,
        kind: 'cab mount',
        original: true,
        group: `${cabBody(vehicle)}/${mount.name}`,
        at: { ...at, z: 0 },
        upper: cabBody(vehicle),
        lower: vehicle.id,
        stiffness: mount.stiffness,
        preload: 0,
        ref: vehicle.cab?.ref ?? { element: vehicle.id },
      };
    }),
  );
  return [...tyres, ...parts, ...mounts, ...bodyOnGround(vehicle)];
}

const lies = ({ posture }: Vehicle) => posture.kind === 'on its side' || posture.kind === 'on its roof';

/** What a body that lies on the ground gives: a setting, from memory, of 50,000 lb an inch at each corner. */
const bodyStiffness = (50_000 * 4.4482216152605) / 0.0254;

/** A vehicle on its side or roof rests on the corners of what is down. */
function bodyOnGround(vehicle: Vehicle): readonly SupportPoint[] {
  if (!lies(vehicle)) return [];
  const half = (vehicle.posture.kind === 'on its roof' ? vehicle.width : vehicle.height) / 2;
  return [0, vehicle.length].flatMap((x, i) =>
    [-half, half].map((y, j): SupportPoint => {
      const end = `${i === 0 ? 'front' : 'rear'} ${j === 0 ? 'driver' : 'passenger'} corner`;
      return {
        id: `${vehicle.id}/${end}`,
        element: vehicle.id,
        label: `${vehicle.name} on the ground, ${end}`,
        kind: 'body',
        original: true,
        group: `${vehicle.id}/${end}`,
        at: { ...toPlan(vehicle, { x, y }), z: 0 },
        upper: vehicle.id,
        lower: 'ground',
        stiffness: bodyStiffness,
        preload: 0,
        ref: { element: vehicle.id, property: 'posture' },
      };
    }),
  );
}

function vehicleContacts(contact: Plan['contacts'][number], plan: Plan): readonly SupportPoint[] {
  const upper = plan.vehicles.find((v) => v.id === contact.upper);
  const lower = plan.vehicles.find((v) => v.id === contact.lower);
  const part = upper?.parts.find((p) => p.id === contact.upperPart);
  const under = lower?.parts.find((p) => p.id === contact.lowerPart);
  return contact.points.map((at, i) => ({
    id: `${contact.id}#${i + 1}`,
    element: contact.lower,
    label: `${lower?.name ?? contact.lower} under ${upper?.name ?? contact.upper}`,
    kind: 'vehicle',
    original: true,
    group: contact.id,
    at: { ...at, z: part?.height.low ?? 0 },
    upper: upper !== undefined && part !== undefined ? bodyOfPart(upper, part) : contact.upper,
    lower: lower !== undefined && under !== undefined ? bodyOfPart(lower, under) : contact.lower,
    stiffness: contact.stiffness,
    preload: 0,
    ref: contact.ref,
  }));
}

/**
 * What the crew's cribs and step chocks hold, contact by contact. Contacts that meet nothing are left out, and so
 * is a crib that cannot reach what it should hold: air carries nothing.
 */
export function placedSupports(w: Workings): readonly SupportPoint[] {
  return [
    ...w
      .cribs()
      .filter(reaches)
      .flatMap((c) => cribPoints(c, w)),
    ...w.stepChocks().flatMap((c) => stepChockPoint(c, w)),
  ];
}

/** What a step chock gives is not published in general: a setting, from memory, of 30,000 lb an inch. */
const stepChockStiffness = (30_000 * 4.4482216152605) / 0.0254;

const stepChockPoint = (c: StepChockWorking, w: Workings): readonly SupportPoint[] => {
  const { chock, meets } = c;
  if (meets === undefined || !carries(c)) return [];
  return [
    {
      id: chock.id,
      element: chock.id,
      label: `step chock ${chock.name}`,
      kind: 'step chock',
      original: false,
      group: chock.id,
      at: { ...chock.at, z: c.height.value?.low ?? 0 },
      upper: bodyOfPart(meets.vehicle, meets.part),
      lower: standsOnBody(chock, w),
      stiffness: stepChockStiffness,
      preload: 0,
      ref: chock.ref,
    },
  ];
};

const reaches = ({ gap, closes, crib }: CribWorking): boolean =>
  crib.courses >= 1 && (gap.value === undefined || gap.value.low <= (closes.value?.high ?? 0) + 1e-9);

function standsOnBody(
  { standsOn }: Pick<CribWorking['crib'], 'standsOn'>,
  w: Workings,
): ElementId | 'ground' {
  if (standsOn.kind !== 'vehicle') return 'ground';
  const vehicle = w.vehicles.get(standsOn.vehicle);
  const part = vehicle?.parts.find((p) => p.id === standsOn.part);
  return vehicle === undefined || part === undefined ? standsOn.vehicle : bodyOfPart(vehicle, part);
}

const cribPoints = (c: CribWorking, w: Workings): readonly SupportPoint[] => {
  const { crib } = c;
  const lower = standsOnBody(crib, w);
  const z = c.height.value?.high ?? 0;
  return c.contacts.flatMap((contact) =>
    contact.meets === undefined
      ? []
      : [
          {
            id: `${crib.id}#${contact.number}`,
            element: crib.id,
            label: `crib ${crib.name} contact ${contact.number}`,
            kind: 'crib' as const,
            original: false,
            group: crib.id,
            at: {
              x: contact.x,
              y: contact.y,
              z: z + (crib.standsOn.kind === 'vehicle' ? crib.standsOn.height.low : 0),
            },
            upper: bodyOfPart(contact.meets.vehicle, contact.meets.part),
            lower,
            stiffness: crossingStiffness(crib.timber, crib.courses),
            preload: (crib.wedges?.preload ?? 0) / c.loaded,
            ref: crib.ref,
          },
        ],
  );
};

/**
 * Along the strut, N/m. A rated strut's own give is not published in general: a setting, from memory, of 20,000 lb
 * an inch; a post's is E A / L.
 */
export const axialStiffness = (strut: Strut, length: number): number =>
  strut.gear.kind === 'timber post'
    ? (strut.gear.timber.modulusAlong *
        strut.gear.timber.width *
        strut.gear.timber.depth *
        strut.gear.plies) /
      length
    : (20_000 * 4.4482216152605) / 0.0254;

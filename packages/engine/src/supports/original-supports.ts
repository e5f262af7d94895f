import { message, name, term } from '@cribwright/messages';
import type { Outline, Part, PlacedVehicle, Plan, Vehicle } from '@cribwright/model';
import { place, toPlan, underside } from '@cribwright/model';
import { lies } from '@cribwright/model/internal';
import { inch, poundForce } from '@cribwright/units';
import { axleWords } from '../element/element-message.js';
import { bodyOfPart, cabBody, type SupportPoint } from './support-points.js';

const sideWords = {
  driver: term('element.driver-side'),
  passenger: term('element.passenger-side'),
} as const;

/** What held the vehicles up before the crew came. */
export function originalSupports(plan: Plan): readonly SupportPoint[] {
  return [
    ...place(plan).vehicles.all.flatMap((v) => ownSupports(v, plan)),
    ...plan.contacts.flatMap((c) => vehicleContacts(c, plan)),
  ];
}

function ownSupports({ vehicle, wheels, extent }: PlacedVehicle, plan: Plan): readonly SupportPoint[] {
  // A part that rests on another vehicle of the plan is held there, and not a second time by the ground.
  const onVehicle = (part: Part) =>
    plan.contacts.some((c) => c.upper === vehicle.id && c.upperPart === part.id);
  const tires = lies(vehicle)
    ? []
    : wheels.map(
        ({ axle, side, at }): SupportPoint => ({
          id: `${vehicle.id}/${axle.id}/${side}`,
          element: vehicle.id,
          label: message('element.wheel-end', {
            vehicle: name(vehicle.name),
            axle: axleWords(axle),
            side: sideWords[side],
          }),
          kind: 'tire',
          original: true,
          group: `${vehicle.id}/${axle.id}`,
          at: { ...at, z: 0 },
          upper: vehicle.id,
          lower: 'ground',
          stiffness: axle.stiffness,
          preload: 0,
          ref: axle.ref,
        }),
      );
  const parts = vehicle.parts.flatMap((part) =>
    part.carries?.down === true && !onVehicle(part) && !lies(vehicle)
      ? part.offsets.map((y, i): SupportPoint => {
          const at = toPlan(vehicle, { x: part.from, y });
          const side = part.offsets.length < 2 ? undefined : y < 0 ? 'driver' : 'passenger';
          const names = { vehicle: name(vehicle.name), part: name(part.name) };
          return {
            id: [vehicle.id, part.id, side ?? `${i + 1}`].join('/'),
            element: vehicle.id,
            label:
              side === undefined
                ? message('element.part', names)
                : message('element.part-side', { ...names, side: sideWords[side] }),
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
        label: message('element.cab-mount', {
          vehicle: name(vehicle.name),
          mount: name(mount.name),
          side: sideWords[side],
        }),
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
  return [...tires, ...parts, ...mounts, ...bodyOnGround(vehicle, extent.outline)];
}

/** What a body that lies on the ground gives: a setting, from memory, of 50,000 lb an inch at each corner. */
const bodyStiffness = (50_000 * poundForce) / inch;

/** A vehicle on its side or roof rests on the corners of what is down. */
function bodyOnGround(vehicle: Vehicle, outline: Outline): readonly SupportPoint[] {
  if (!lies(vehicle)) return [];
  return corners.flatMap(({ corner, words, index }): readonly SupportPoint[] => {
    const at = outline[index];
    return at === undefined
      ? []
      : [
          {
            id: `${vehicle.id}/${corner}`,
            element: vehicle.id,
            label: message('element.lying-corner', { vehicle: name(vehicle.name), corner: words }),
            kind: 'body',
            original: true,
            group: `${vehicle.id}/${corner}`,
            at: { ...at, z: 0 },
            upper: vehicle.id,
            lower: 'ground',
            stiffness: bodyStiffness,
            preload: 0,
            ref: { element: vehicle.id, property: 'position' },
          },
        ];
  });
}

/** The corners of a body's outline, by their place in it. */
const corners = [
  { corner: 'front driver corner', words: term('element.front-driver-corner'), index: 0 },
  { corner: 'front passenger corner', words: term('element.front-passenger-corner'), index: 3 },
  { corner: 'rear driver corner', words: term('element.rear-driver-corner'), index: 1 },
  { corner: 'rear passenger corner', words: term('element.rear-passenger-corner'), index: 2 },
] as const;

function vehicleContacts(contact: Plan['contacts'][number], plan: Plan): readonly SupportPoint[] {
  const upper = plan.vehicles.find((v) => v.id === contact.upper);
  const lower = plan.vehicles.find((v) => v.id === contact.lower);
  const part = upper?.parts.find((p) => p.id === contact.upperPart);
  const under = lower?.parts.find((p) => p.id === contact.lowerPart);
  return contact.points.map((at, i) => ({
    id: `${contact.id}#${i + 1}`,
    element: contact.lower,
    label: message('element.vehicle-under', {
      lower: name(lower?.name ?? contact.lower),
      upper: name(upper?.name ?? contact.upper),
    }),
    kind: 'vehicle',
    original: true,
    group: contact.id,
    at: { ...at, z: upper === undefined || part === undefined ? 0 : underside(upper, part, at).low },
    upper: upper !== undefined && part !== undefined ? bodyOfPart(upper, part) : contact.upper,
    lower: lower !== undefined && under !== undefined ? bodyOfPart(lower, under) : contact.lower,
    stiffness: contact.stiffness,
    preload: 0,
    ref: contact.ref,
  }));
}

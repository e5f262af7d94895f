import { count, message, name } from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import { inch, poundForce } from '@cribwright/units';
import type { CribWorking } from '../crib/crib-working.js';
import { carries, type StepChockWorking } from '../crib/step-chock-working.js';
import { crossingStiffness } from '../crib/stiffness.js';
import { strutPoints } from './strut-points.js';
import { type BearingKind, bodyOfPart, type SupportPoint } from './support-points.js';
import type { SupportWorkings } from './support-workings.js';

/** Where supports of each kind hold a body up. */
const pointsOf: Readonly<Record<BearingKind, (w: SupportWorkings) => readonly SupportPoint[]>> = {
  crib: (w) =>
    w
      .cribs()
      .filter(reaches)
      .flatMap((c) => cribPoints(c, w)),
  'step chock': (w) => w.stepChocks().flatMap((c) => stepChockPoint(c, w)),
  strut: strutPoints,
};

/**
 * What the crew's supports hold, contact by contact. Contacts that meet nothing are left out, and so is a crib that
 * cannot reach what it should hold: air carries nothing.
 */
export const placedSupports = (w: SupportWorkings): readonly SupportPoint[] =>
  Object.values(pointsOf).flatMap((points) => points(w));

/** What a step chock gives is not published in general: a setting, from memory, of 30,000 lb an inch. */
const stepChockStiffness = (30_000 * poundForce) / inch;

const stepChockPoint = (c: StepChockWorking, w: SupportWorkings): readonly SupportPoint[] => {
  const { chock, meets } = c;
  if (meets === undefined || !carries(c)) return [];
  return [
    {
      id: chock.id,
      element: chock.id,
      label: message('element.step-chock', { name: name(chock.name) }),
      kind: 'step chock',
      original: false,
      group: chock.id,
      at: { ...chock.at, z: (c.placed.base?.low ?? 0) + (c.height.value?.low ?? 0) },
      upper: bodyOfPart(meets.vehicle, meets.part),
      lower: standsOnBody(chock, w),
      stiffness: stepChockStiffness,
      preload: 0,
      ref: chock.ref,
    },
  ];
};

const reaches = ({ gap, closes, crib }: CribWorking): boolean =>
  crib.courses >= 1 && gap.value !== undefined && gap.value.low <= (closes.value?.high ?? 0) + 1e-9;

function standsOnBody(
  { standsOn }: Pick<CribWorking['crib'], 'standsOn'>,
  w: SupportWorkings,
): ElementId | 'ground' {
  if (standsOn.kind !== 'vehicle') return 'ground';
  const vehicle = w.vehicles.get(standsOn.vehicle);
  const part = vehicle?.parts.find((p) => p.id === standsOn.part);
  return vehicle === undefined || part === undefined ? standsOn.vehicle : bodyOfPart(vehicle, part);
}

const cribPoints = (c: CribWorking, w: SupportWorkings): readonly SupportPoint[] => {
  const { crib } = c;
  const lower = standsOnBody(crib, w);
  const { base, heightWithShims } = c.placed;
  return c.contacts.flatMap((contact) =>
    contact.meets === undefined
      ? []
      : [
          {
            id: `${crib.id}#${contact.number}`,
            element: crib.id,
            label: message('element.contact', { crib: name(crib.name), contact: count(contact.number) }),
            kind: 'crib' as const,
            original: false,
            group: crib.id,
            at: {
              x: contact.x,
              y: contact.y,
              z: (base?.low ?? 0) + heightWithShims,
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

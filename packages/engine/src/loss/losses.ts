import { type Message, message, name } from '@cribwright/messages';
import type { Plan, Ref } from '@cribwright/model';
import { supportsOf } from '@cribwright/model';
import { limitWord } from '@cribwright/model/internal';
import { axleWords, elementMessage } from '../element/element-message.js';
import type { BearingKind, SupportPoint } from '../supports/support-points.js';

/** Something that may give way: what was there before the crew, or the ground under what they put in. */
export interface Loss {
  readonly id: string;
  /** `car gives way` */
  readonly title: Message;
  readonly ref: Ref;
  /** Ids of the points that go with it. */
  readonly points: readonly string[];
}

/**
 * A part that is carried this high, m, sits on another vehicle and is coupled to it: a kingpin. A landing gear leg is
 * carried at its base.
 */
const coupledAbove = 0.75;

/**
 * Everything that may give way: each wheel end, the air springs of an axle or a cab, each landing gear leg, each
 * vehicle beneath (a coupling does not), each corner of a body that lies on the ground, the ground under each strut's
 * foot, and where the policy says so the ground under each crib and step chock.
 */
export function lossesOf(plan: Plan, points: readonly SupportPoint[]): readonly Loss[] {
  return [
    ...plan.contacts.filter((c) => !c.coupled).flatMap((c) => vehicleBeneath(plan, c, points)),
    ...points
      .filter((p) => p.kind === 'tire' || p.kind === 'body' || (p.kind === 'part' && p.at.z < coupledAbove))
      .map(single),
    ...airSprungAxles(plan, points),
    ...airSprungCabs(plan, points),
    ...Object.values(groundUnder).flatMap((under) => under(plan, points)),
  ];
}

function vehicleBeneath(
  plan: Plan,
  contact: Plan['contacts'][number],
  points: readonly SupportPoint[],
): readonly Loss[] {
  const what = name(plan.vehicles.find((v) => v.id === contact.lower)?.name ?? contact.lower);
  const group = idsOf(points, (p) => p.group === contact.id);
  return group.length === 0
    ? []
    : [
        {
          id: contact.id,
          title: message('loss.gives-way', { what }),
          ref: { element: contact.lower },
          points: group,
        },
      ];
}

const single = (p: SupportPoint): Loss => ({
  id: p.id,
  title:
    p.kind === 'tire'
      ? message('loss.tire-lost', { tire: p.label })
      : message('loss.gives-way', { what: p.label }),
  ref: p.ref,
  points: [p.id],
});

const airSprungAxles = (plan: Plan, points: readonly SupportPoint[]): readonly Loss[] =>
  plan.vehicles.flatMap((v) =>
    v.axles
      .filter((a) => a.suspension === 'air')
      .map((a) => ({
        id: `${v.id}/${a.id}`,
        title: message('loss.air-springs', { vehicle: name(v.name), axle: axleWords(a) }),
        ref: a.ref,
        points: idsOf(points, (p) => p.group === `${v.id}/${a.id}`),
      }))
      .filter((l) => l.points.length > 0),
  );

const airSprungCabs = (plan: Plan, points: readonly SupportPoint[]): readonly Loss[] =>
  plan.vehicles.flatMap((v) =>
    (v.cab?.mounts ?? [])
      .filter((m) => m.spring === 'air')
      .map((m) => ({
        id: `${v.id}/cab/${m.name}`,
        title: message('loss.cab-mount', { vehicle: name(v.name), mount: name(m.name) }),
        ref: v.cab?.ref ?? { element: v.id },
        points: idsOf(points, (p) => p.group === `${v.id}/cab/${m.name}`),
      })),
  );

const footGround = (plan: Plan, p: SupportPoint): Loss => ({
  id: `${p.id}/ground`,
  title: message('loss.ground-under-strut', { strut: elementMessage(plan, p.element) }),
  ref: { element: p.element, property: 'base' },
  points: [p.id],
});

/** A crib goes with all of its contacts on the ground; one that stands on a vehicle goes with that. */
const groundOf =
  (kind: BearingKind) =>
  (plan: Plan, points: readonly SupportPoint[]): readonly Loss[] => {
    if (limitWord(plan.policy, 'ground under cribs') !== 'may give way') return [];
    return supportsOf(plan)
      .filter((s) => s.kind === kind)
      .flatMap(({ id }) => {
        const own = idsOf(points, (p) => p.element === id && p.lower === 'ground');
        return own.length === 0
          ? []
          : [
              {
                id: `${id}/ground`,
                title: message('loss.ground-under', { support: elementMessage(plan, id) }),
                ref: { element: id, property: 'stands on' },
                points: own,
              },
            ];
      });
  };

/** The ground under supports of each kind, where it may give way. */
const groundUnder: Readonly<
  Record<BearingKind, (plan: Plan, points: readonly SupportPoint[]) => readonly Loss[]>
> = {
  strut: (plan, points) => points.filter((p) => p.kind === 'strut').map((p) => footGround(plan, p)),
  crib: groundOf('crib'),
  'step chock': groundOf('step chock'),
};

const idsOf = (points: readonly SupportPoint[], wanted: (p: SupportPoint) => boolean): readonly string[] =>
  points.filter(wanted).map((p) => p.id);

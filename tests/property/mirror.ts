import type { Plan, Vehicle } from '@cribwright/model';

const swap = <T extends string>(side: T): T =>
  (side === 'driver' ? 'passenger' : side === 'passenger' ? 'driver' : side) as T;

const flip = <T extends { readonly y: number }>(point: T): T => ({ ...point, y: -point.y });
const turned = (range: { readonly low: number; readonly high: number }) => ({
  low: -range.high,
  high: -range.low,
});

const mirrorVehicle = (v: Vehicle): Vehicle => ({
  ...v,
  at: flip(v.at),
  heading: -v.heading,
  position: v.position.kind === 'on its side' ? { ...v.position, side: swap(v.position.side) } : v.position,
  ...(v.statedCenter === undefined
    ? {}
    : { statedCenter: { ...v.statedCenter, y: turned(v.statedCenter.y) } }),
  axles: v.axles.map((a) => ({ ...a, missing: a.missing.map(swap) })),
  parts: v.parts.map((p) => ({ ...p, offsets: p.offsets.map((y) => -y).reverse() })),
  cargo: v.cargo.map((c) => ({ ...c, offset: turned(c.offset) })),
});

/** The plan seen in a mirror that swaps the driver side and the passenger side. Names stay. */
export const mirror = (plan: Plan): Plan => ({
  ...plan,
  ground: {
    ...plan.ground,
    toward:
      plan.ground.toward === 'driver side'
        ? 'passenger side'
        : plan.ground.toward === 'passenger side'
          ? 'driver side'
          : plan.ground.toward,
  },
  vehicles: plan.vehicles.map(mirrorVehicle),
  contacts: plan.contacts.map((c) => ({ ...c, points: c.points.map(flip) })),
  cribs: plan.cribs.map((c) => ({ ...c, at: flip(c.at) })),
  stepChocks: plan.stepChocks.map((s) => ({ ...s, at: flip(s.at) })),
  struts: plan.struts.map((s) => ({ ...s, head: flip(s.head), foot: flip(s.foot) })),
  ties: plan.ties.map((t) => ({
    ...t,
    from: 'y' in t.from ? flip(t.from) : t.from,
    to: 'y' in t.to ? flip(t.to) : t.to,
  })),
  toolLoads: plan.toolLoads.map((l) => ({ ...l, at: flip(l.at), direction: flip(l.direction) })),
  egress: plan.egress.map((e) => ({ ...e, points: e.points.map(flip) })),
});

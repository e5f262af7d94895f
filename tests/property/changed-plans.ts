import type { Analysis } from '@cribwright/engine';
import type { Cargo, Crib, ElementId, Interval, Plan } from '@cribwright/model';

const end = (i: Interval): Interval => ({ low: i.high, high: i.high });

/** For a height that nobody knows, m: any would do. */
const somewhere: Interval = { low: 1.5, high: 1.5 };

/** The same plan with every weight and place at its high end, and every height known, so that loads are single numbers. */
export const exact = (plan: Plan): Plan => ({
  ...plan,
  vehicles: plan.vehicles.map((v) => ({
    ...v,
    ...(v.statedWeight === undefined ? {} : { statedWeight: end(v.statedWeight) }),
    axles: v.axles.map((a) => ({ ...a, emptyLoad: end(a.emptyLoad) })),
    parts: v.parts.map((p) =>
      p.carries?.emptyLoad === undefined
        ? p
        : { ...p, carries: { ...p.carries, emptyLoad: end(p.carries.emptyLoad) } },
    ),
    cargo: v.cargo.map((c) => ({
      ...c,
      weight: end(c.weight),
      center: end(c.center ?? { low: c.from, high: (c.from + c.to) / 2 }),
      offset: end(c.offset),
      height: end(c.height ?? somewhere),
      // Cargo that may shift may lie anywhere in its bay, which is a range.
      shifts: false,
    })),
    emptyCenterHeight: end(v.emptyCenterHeight ?? somewhere),
    ...(v.cab === undefined
      ? {}
      : {
          cab: {
            ...v.cab,
            weight: end(v.cab.weight),
            center: { x: end(v.cab.center.x), z: end(v.cab.center.z) },
          },
        }),
  })),
  toolLoads: [],
});

/** Every weight times `by`, or every weight of one vehicle alone; places stay, so that each center of gravity stays. */
export function heavier(plan: Plan, by: number, only?: ElementId): Plan {
  const more = (i: Interval): Interval => ({ low: i.low * by, high: i.high * by });
  return {
    ...plan,
    vehicles: plan.vehicles.map((v) =>
      only !== undefined && v.id !== only
        ? v
        : {
            ...v,
            ...(v.statedWeight === undefined ? {} : { statedWeight: more(v.statedWeight) }),
            axles: v.axles.map((a) => ({ ...a, emptyLoad: more(a.emptyLoad) })),
            parts: v.parts.map((p) =>
              p.carries?.emptyLoad === undefined
                ? p
                : { ...p, carries: { ...p.carries, emptyLoad: more(p.carries.emptyLoad) } },
            ),
            cargo: v.cargo.map((c) => ({ ...c, weight: more(c.weight) })),
            ...(v.cab === undefined ? {} : { cab: { ...v.cab, weight: more(v.cab.weight) } }),
          },
    ),
  };
}

/** Nothing driven in beforehand and nothing else pushing: what a wedge holds does not grow with the weight. */
export const snug = (plan: Plan): Plan => ({
  ...plan,
  toolLoads: [],
  cribs: plan.cribs.map((c) => ({
    ...c,
    wedges: c.wedges === undefined ? undefined : { ...c.wedges, preload: 0 },
  })),
  struts: plan.struts.map((s) => ({ ...s, preload: 0 })),
});

/** No vehicle rests on another, and no crib stands on one or holds two: each is held by itself. */
export function apart(plan: Plan): Plan {
  const known = new Set(plan.vehicles.map((v) => v.id));
  const holdsOne = (c: Crib) => {
    const on = c.standsOn?.kind === 'vehicle' ? [c.standsOn.vehicle] : [];
    const all = new Set([...c.captures.map((k) => k.vehicle), ...on].filter((id) => known.has(id)));
    return all.size < 2;
  };
  return { ...plan, contacts: [], cribs: plan.cribs.filter(holdsOne) };
}

/** More cargo in the first vehicle, just where its center of gravity is. `undefined` where that is not known. */
export function withCargoAtCenter(plan: Plan, analysis: Analysis, weight: number): Plan | undefined {
  const [vehicle, ...others] = plan.vehicles;
  const center = analysis.bodies[0]?.center;
  const [x, y] = [center?.x.value, center?.y.value];
  // The places of a vehicle that lies are told as it lies; its cargo's as it stood. Where the cab has springs of its
  // own, the center of the two together is not that of the body that takes the cargo.
  if (vehicle?.cab !== undefined) return undefined;
  if (vehicle === undefined || x === undefined || y === undefined || vehicle.position.kind !== 'upright')
    return undefined;
  const cargo: Cargo = {
    id: 'more cargo',
    name: 'more',
    weight: { low: weight, high: weight },
    from: x.low,
    to: x.high,
    center: x,
    offset: y,
    height: center?.z.value,
    shifts: false,
    ref: { element: vehicle.id, property: 'cargo' },
  };
  return { ...plan, vehicles: [{ ...vehicle, cargo: [...vehicle.cargo, cargo] }, ...others] };
}

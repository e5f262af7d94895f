import type { Interval, Plan } from '@cribwright/engine';

const end = (i: Interval): Interval => ({ low: i.high, high: i.high });

/** The same plan with every weight and place at its high end, so that loads are single numbers. */
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
      centre: end(c.centre ?? { low: c.from, high: (c.from + c.to) / 2 }),
      offset: end(c.offset),
      height: c.height === undefined ? undefined : end(c.height),
    })),
    emptyCentreHeight: v.emptyCentreHeight === undefined ? undefined : end(v.emptyCentreHeight),
    ...(v.cab === undefined
      ? {}
      : {
          cab: { ...v.cab, weight: end(v.cab.weight), centre: { ...v.cab.centre, x: end(v.cab.centre.x) } },
        }),
  })),
  workingLoads: [],
});

/** Every weight times `by`; places stay. */
export function heavier(plan: Plan, by: number): Plan {
  const more = (i: Interval): Interval => ({ low: i.low * by, high: i.high * by });
  return {
    ...plan,
    vehicles: plan.vehicles.map((v) => ({
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
    })),
  };
}

/** Nothing driven in beforehand and nothing else pushing: what a wedge holds does not grow with the weight. */
export const snug = (plan: Plan): Plan => ({
  ...plan,
  workingLoads: [],
  cribs: plan.cribs.map((c) => ({
    ...c,
    wedges: c.wedges === undefined ? undefined : { ...c.wedges, preload: 0 },
  })),
  struts: plan.struts.map((s) => ({ ...s, preload: 0 })),
});

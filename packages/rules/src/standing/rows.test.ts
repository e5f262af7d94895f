import { workingsOf } from '@cribwright/engine';
import { english } from '@cribwright/messages/testing';
import { exactly, type Plan, type Vehicle } from '@cribwright/model';
import {
  chock,
  crib,
  foot,
  inch,
  lb,
  planOf,
  policyWith,
  sedan,
  step,
  straightTruck,
  strap,
  strut,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyze } from '../analysis/analyze.js';

/** Findings of a rule on an element, as text. */
const found = (plan: Plan, rule: string, element?: string): readonly string[] =>
  analyze(plan, { push: true })
    .findings.filter((f) => f.rule === rule && (element === undefined || f.subject.element === element))
    .map((f) => english(f.message));

const grip = (plan: Plan, friction: number): Plan => ({
  ...plan,
  ground: {
    ...plan.ground,
    surface: {
      ...plan.ground.surface,
      frictionTire: { low: friction, high: friction },
      frictionTimber: { low: friction, high: friction },
      frictionBody: { low: friction, high: friction },
    },
  },
});

/** A truck of 20,000 lb, half way between its axles; `aside` is the place of its center to the passenger side, m. */
const exactTruck = (aside: number): Vehicle => ({
  ...straightTruck,
  cargo: [],
  statedWeight: exactly(20_000 * lb),
  statedCenter: { x: exactly(14 * foot), y: exactly(aside), z: exactly(4 * foot) },
});

const onGrade = (plan: Plan, grade: number): Plan => ({
  ...plan,
  ground: { ...plan.ground, grade, toward: 'rear' },
});

/** The same plan seen in a mirror along its length. */
const mirrored = (plan: Plan): Plan => ({
  ...plan,
  vehicles: plan.vehicles.map((v) => ({
    ...v,
    at: { x: v.at.x, y: -v.at.y },
    heading: -v.heading,
    position:
      v.position.kind === 'on its side'
        ? { kind: 'on its side', side: v.position.side === 'driver' ? 'passenger' : 'driver' }
        : v.position,
  })),
});

describe('every vehicle is asked about, wherever it stands in the text', () => {
  const truck: Vehicle = {
    ...straightTruck,
    position: { kind: 'on its side', side: 'driver' },
    at: { x: 0, y: 20 * foot },
  };
  const car: Vehicle = { ...sedan, at: { x: 0, y: -20 * foot } };
  const plan = (vehicles: readonly Vehicle[]) =>
    grip(planOf({ vehicles, chocks: [chock('K1', 'car')] }), 0.02);

  it.each<[string, Plan]>([
    ['first', plan([truck, car])],
    ['second', plan([car, truck])],
    ['second, mirrored', mirrored(plan([car, truck]))],
  ])('a truck on its side that holds 2 percent, written %s', (_, p) => {
    const [one, ...more] = found(p, 'push-margin', truck.id);
    expect(more).toEqual([]);
    expect(one).toMatch(/hold 2 % of its weight/);
  });

  const twice = (first: Vehicle, second: Vehicle) =>
    grip(onGrade(planOf({ vehicles: [first, second], chocks: [chock('K1', 'car')] }), 0.06), 0.04);
  it.each([
    ['first', twice(car, truck)],
    ['second', twice(truck, car)],
  ])('a car on a grade of ice, written %s', (_, p) => {
    expect(found(p, 'stage-moves', car.id)).toHaveLength(1);
    expect(found(p, 'stage-moves', truck.id)[0]).toMatch(/slides/);
  });
});

describe('stages that are half built', () => {
  const truck: Vehicle = { ...straightTruck, brakesSet: false };
  const chocked = (after: readonly ReturnType<typeof step>[]) =>
    onGrade(
      planOf({
        vehicles: [truck],
        chocks: [chock('K1', 'truck'), chock('K2', 'truck', { axle: 'axle 1' })],
        steps: [step(1, 'chock', [truck.id]), ...after],
      }),
      0.08,
    );
  it('are checked for rolling: chocks taken out on 8 % and put in again', () => {
    expect(found(chocked([]), 'stage-moves')).toEqual([]);
    const out = chocked([
      step(2, 'remove', ['chock/K1', 'chock/K2']),
      step(3, 'chock', [truck.id], { with: ['chock/K1', 'chock/K2'] }),
    ]);
    const [one, ...more] = found(out, 'stage-moves');
    expect(more).toEqual([]);
    expect(one).toMatch(/After step 2.* rolls on the grade of 8 %/);
  });
  it('are not said to roll with brakes that the plan states as set', () => {
    const braked = {
      ...chocked([step(2, 'remove', ['chock/K1', 'chock/K2'])]),
      vehicles: [{ ...truck, brakesSet: true }],
    };
    expect(found(braked, 'stage-moves')).toEqual([]);
  });
});

describe('a coupling without its other half', () => {
  it('holds nothing: a trailer on its tandem and a kingpin in the air', () => {
    const plan = planOf({ vehicles: [vanTrailer], chocks: [chock('K1', 'trailer')] });
    expect(found(plan, 'coupling-missing', vanTrailer.id)).toHaveLength(1);
  });
  it('is none where the tractor is in the plan', () => {
    const plan = planOf({
      vehicles: [vanTrailer, { ...straightTruck, at: { x: -20 * foot, y: 0 } }],
      chocks: [chock('K1', 'trailer'), chock('K2', 'truck')],
      contacts: [
        {
          id: 'contact/truck-trailer',
          lower: straightTruck.id,
          upper: vanTrailer.id,
          upperPart: 'kingpin',
          points: [{ x: 3 * foot, y: 0 }],
          coupled: true,
          stiffness: (20_000 * lb) / inch,
          ref: { element: vanTrailer.id },
        },
      ],
    });
    expect(found(plan, 'coupling-missing')).toEqual([]);
  });
});

/** A chocked truck whose rear stands on a raked pair of struts alone: its rear tires are lost before the crew came. */
const onAPair = (angle: number, change: Partial<Plan> = {}): Plan => {
  const rise = 40 * inch;
  const out = rise / Math.tan((angle * Math.PI) / 180);
  const at = (name: string, side: -1 | 1) =>
    strut(name, 22 * foot, side * 46 * inch, side * (46 * inch + out), {
      head: {
        vehicle: straightTruck.id,
        part: 'rail',
        x: 22 * foot,
        y: side * 46 * inch,
        z: { low: rise, high: rise },
        ref: { element: `strut/${name}` },
      },
    });
  return planOf({
    vehicles: [straightTruck],
    chocks: [chock('K1', 'truck', { axle: 'axle 1' })],
    struts: [at('S1', -1), at('S2', 1)],
    ties: [strap('T1', 'S1', 'S2')],
    steps: [
      step(1, 'chock', [straightTruck.id]),
      step(2, 'set', ['strut/S1', 'strut/S2']),
      step(3, 'tension', ['tie/T1']),
    ],
    ...change,
  });
};

describe('struts and the strap between their feet', () => {
  it('have their thrust in balance after a loss: strap = S cos a less friction, at every foot', () => {
    const w = workingsOf(onAPair(50), { push: true });
    const [group] = w.standing().groups;
    const lost = group?.stages.at(-1)?.losses.find((l) => l.loss?.id.endsWith('axle 2/passenger'));
    const s = lost?.loads.get('strut/S2')?.most ?? 0;
    const pull = lost?.loads.get('tie/T1')?.most ?? 0;
    const thrust = lost?.thrusts.get('strut/S2')?.most ?? 0;
    expect(lost?.failure).toBeUndefined();
    expect(s / lb).toBeGreaterThan(500);
    expect((s * Math.cos((50 * Math.PI) / 180)) / (pull + thrust)).toBeCloseTo(1, 3);
  });

  it('go together: with the ground under one foot its strap is gone, and the foot at its other end slides', () => {
    // One rear tire is missing, so that one strut carries that side; its strap ends at the foot of the other strut.
    const without = (side: 'driver' | 'passenger') =>
      onAPair(50, {
        vehicles: [
          {
            ...straightTruck,
            axles: straightTruck.axles.map((a) => (a.name === 'axle 2' ? { ...a, missing: [side] } : a)),
          },
        ],
      });
    const driver = found(without('driver'), 'loss-moves');
    expect(driver.some((text) => /strut S2.*(slides|falls|nothing holds)/.test(text))).toBe(true);
    const passenger = found(without('passenger'), 'loss-moves');
    expect(passenger.some((text) => /strut S1.*(slides|falls|nothing holds)/.test(text))).toBe(true);
  });
});

describe('a pair of struts that leans together over a vehicle on its wheels', () => {
  const onWheels = (order: 'first' | 'second', flip: boolean): Plan => {
    const plan = onAPair(60);
    const all = { ...plan, vehicles: order === 'first' ? plan.vehicles : [aside, ...plan.vehicles] };
    return flip ? mirrored(all) : all;
  };
  const aside: Vehicle = { ...sedan, at: { x: 0, y: -30 * foot } };
  it.each<['first' | 'second', boolean]>([
    ['first', false],
    ['second', false],
    ['first', true],
  ])('is never called nothing, written %s, mirrored %s', (order, flip) => {
    const rose = workingsOf(onWheels(order, flip), { push: true })
      .pushes()
      .find((r) => r.vehicle === straightTruck.id)?.rose;
    if (rose === undefined || 'why' in rose) throw new Error('no push');
    for (const d of rose.directions) {
      expect(d.share.value?.low).toBeGreaterThan(0);
      expect(english(d.givesFirst?.how)).not.toMatch(/nothing holds/);
    }
  });
});

describe('a push held in space', () => {
  it('is never more than the linear program with every strut allows, and friction of the axle that is chocked', () => {
    // On level ground along its length only the chocked axle holds: mu times its load, over the weight.
    const plan = planOf({ vehicles: [straightTruck], chocks: [chock('K1', 'truck', { axle: 'axle 1' })] });
    const w = workingsOf(plan, { push: true });
    const rose = w.pushes()[0]?.rose;
    if (rose === undefined || 'why' in rose) throw new Error('no push');
    const axle = (['driver', 'passenger'] as const).map(
      (side) =>
        w.standing().groups[0]?.stages.at(-1)?.asBuilt.loads.get(`${straightTruck.id}/axle 1/${side}`)
          ?.most ?? 0,
    );
    const mu = plan.ground.surface.frictionTire.low;
    const along = rose.directions[0];
    expect(along?.holds.value?.low).toBeLessThan(1.1 * mu * axle.reduce((a, b) => a + b, 0));
    expect(along?.share.value?.low).toBeGreaterThan(0);
  });
});

describe('a tall body between guys', () => {
  const tall: Vehicle = {
    ...straightTruck,
    cargo: [],
    emptyCenterHeight: { low: 150 * inch, high: 150 * inch },
  };
  const guy = (name: string, side: -1 | 1): Plan['ties'][number] => ({
    ...strap(name, 'S1', 'S2'),
    from: {
      kind: 'vehicle part',
      vehicle: tall.id,
      part: 'rail',
      x: 15 * foot,
      y: side * 4 * foot,
      z: 40 * inch,
    },
    to: {
      kind: 'ground anchor',
      name: `${name}-anchor`,
      x: 15 * foot,
      y: side * 20 * foot,
      holds: 20_000 * lb,
    },
  });
  const plan = planOf({
    vehicles: [tall],
    chocks: [chock('K1', 'truck'), chock('K2', 'truck', { axle: 'axle 1' })],
  });
  const strict = { ...plan, policy: policyWith('push margin', 0.3) };
  it('tips over without them', () => {
    expect(found(strict, 'tipping')).toHaveLength(1);
  });
  it('is judged by the push with them', () => {
    const guyed = { ...strict, ties: [guy('G1', -1), guy('G2', 1)] };
    expect(found(guyed, 'tipping')).toEqual([]);
    const bare = pushOf(strict);
    expect(pushOf(guyed)).toBeGreaterThan(bare);
  });
  const pushOf = (p: Plan): number => analyze(p, { push: true }).push?.least.value?.low ?? Number.NaN;
});

describe('the use limit', () => {
  it('reaches the push: half of every capacity allows no more than all of it', () => {
    const plan = onAPair(50);
    const at = (useLimit: number): number => {
      const limits = plan.policy.limits;
      const policy = {
        ...plan.policy,
        limits: { ...limits, 'use limit': { ...limits['use limit'], value: useLimit } },
      };
      const push = analyze({ ...plan, policy }, { push: true }).push;
      return push?.least.value?.low ?? Number.NaN;
    };
    const [all, little] = [at(1), at(0.02)];
    expect(all).toBeGreaterThan(0);
    expect(little).toBeLessThan(all);
  });
});

describe('a vehicle that pitches with its wheels down', () => {
  it('stands on a slope, and slides where that is steeper than its friction', () => {
    const pitched: Vehicle = { ...straightTruck, position: { kind: 'pitched', angle: 0.1 } };
    const plan = (friction: number) =>
      grip(
        planOf({
          vehicles: [pitched],
          chocks: [chock('K1', 'truck'), chock('K2', 'truck', { axle: 'axle 1' })],
        }),
        friction,
      );
    // W sin a against mu W cos a: it slides where mu is below tan 0.1 = 0.1003.
    expect(found(plan(0.11), 'stage-moves')).toEqual([]);
    expect(found(plan(0.09), 'stage-moves')[0]).toMatch(/slides/);
  });
});

describe('a tool that pulls sideways', () => {
  // Three supports, so that statics decides: one front tire, and a crib under each rail behind. 20,000 lb, center half
  // way between axle and cribs, and as far to the side as gives both cribs the same: 10,000 lb on the tire, 5,000 lb on
  // each crib.
  const center = 1.5 * foot;
  const front: Vehicle = {
    ...exactTruck(center),
    axles: straightTruck.axles.map((a) => ({
      ...a,
      missing: a.name === 'axle 1' ? (['driver'] as const) : (['driver', 'passenger'] as const),
    })),
  };
  const under = (name: string, y: number) =>
    crib(name, 24 * foot, y, {
      captures: [{ vehicle: front.id, part: 'rail', contacts: 'outer', ref: { element: `crib/${name}` } }],
    });
  const planWith = (pull: number, toward: -1 | 1): Plan =>
    planOf({
      vehicles: [front],
      cribs: [under('A', -42.75 * inch), under('B', 42.75 * inch)],
      chocks: [chock('K1', 'truck', { axle: 'axle 1' })],
      toolLoads: [
        {
          id: 'load/winch',
          name: 'winch',
          on: front.id,
          at: { x: 14 * foot, y: 0, z: 9 * foot },
          force: { low: 0, high: pull },
          direction: { x: 0, y: toward, z: 0 },
          ref: { element: 'load/winch' },
        },
      ],
    });
  const worst = (plan: Plan, id: string): number => {
    const w = workingsOf(plan, { push: true });
    return (w.standing().groups[0]?.stages.at(-1)?.asBuilt.loads.get(id)?.most ?? Number.NaN) / lb;
  };

  it.each([
    ['A', -1],
    ['B', 1],
  ] as const)('reaches crib %s, on the side it pulls to, as moments about the ground say', (name, toward) => {
    const pull = 1500;
    const plan = planWith(pull * lb, toward);
    const w = workingsOf(plan, { push: true });
    const heads = w.standing().groups[0]?.group.points.filter((p) => p.element === `crib/${name}`) ?? [];
    const [least, most] = [Math.min, Math.max].map((of) => of(...heads.map((p) => Math.abs(p.at.y) / foot)));
    if (least === undefined || most === undefined || !(least > 0)) throw new Error('no contacts');
    // Friction takes the pull at the ground, or all of it on top of the cribs, 40 in up.
    const high = 5000 + (pull * 9) / (2 * least);
    const low = 5000 + (pull * (9 - 40 / 12)) / (2 * most);
    expect(worst(plan, `crib/${name}`)).toBeGreaterThan(low);
    expect(worst(plan, `crib/${name}`)).toBeLessThan(high + 200);
    expect(worst(planWith(0, toward), `crib/${name}`)).toBeLessThan(5600);
  });
});

describe('a support that is lost at once', () => {
  // One weight and one place, so that there is one corner and each load is of the same case.
  const truck = exactTruck(0);
  const load = (factor: number, lost: boolean): number => {
    const policy = policyWith('sudden loss factor', factor);
    const w = workingsOf(onAPair(50, { vehicles: [truck], policy }), { push: true });
    const stage = w.standing().groups[0]?.stages.at(-1);
    const of = lost ? stage?.losses.find((l) => l.loss?.id.endsWith('axle 2/passenger')) : stage?.asBuilt;
    return of?.loads.get('strut/S2')?.most ?? Number.NaN;
  };

  it('adds to another as often as much as the policy says: twice for a weight let go on a spring, from memory', () => {
    const [before, slow, sudden] = [load(1, false), load(1, true), load(2, true)];
    expect(slow).toBeGreaterThan(before + 100 * lb);
    expect((sudden - before) / (slow - before)).toBeCloseTo(2, 6);
    expect(load(2, false)).toBeCloseTo(before, 6);
  });

  it('names the factor with the load', () => {
    const policy = policyWith('sudden loss factor', 2);
    const plan = onAPair(50, { vehicles: [truck], policy });
    const at = (p: Plan) =>
      english(analyze(p, { push: true }).supports.find((s) => s.id === 'strut/S2')?.figures.load?.governs);
    expect(at(plan)).toContain('sudden loss factor 2');
    expect(at(onAPair(50, { vehicles: [truck] }))).not.toContain('sudden');
  });
});

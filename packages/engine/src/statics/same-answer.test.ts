import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inOneGo } from '../stepwise/stepwise.js';
import type { Forces } from './forces.js';
import { lose } from './loss.js';
import { place } from './place.js';
import { push } from './push.js';
import type { Contact, Holder, Push, Scene, Vector } from './scene.js';
import { start } from './state.js';
import { type RandomScene, randomScene } from './testing/random-scene.js';
import { at, outcomeOf } from './testing/sample-scenes.js';

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });
const runs = { numRuns: 120, endOnFailure: true };

/** Everything that is asked, in numbers that do not depend on how the scene is written. */
interface Answer {
  readonly kinds: readonly string[];
  readonly normals: ReadonlyMap<string, number>;
  readonly push: number | undefined;
}

function answer({ scene, later, lost, push: of }: RandomScene): Answer {
  const kinds: string[] = [];
  let normals = new Map<string, number>();
  let pushed: number | undefined;
  const first = outcomeOf(scene, start(scene, later));
  kinds.push(first.kind);
  if (first.kind === 'rests') {
    const built = outcomeOf(scene, place(scene, first.state, later));
    kinds.push(built.kind);
    if (built.kind === 'rests') {
      const after = outcomeOf(scene, lose(scene, built.state, lost));
      kinds.push(after.kind);
      normals = carried(after.kind === 'rests' ? after.forces : built.forces);
      const result = inOneGo(push(scene, built.state, of));
      kinds.push(result.kind === 'held' ? 'held' : 'not solved');
      pushed = result.kind === 'held' ? result.push : undefined;
    }
  }
  return { kinds, normals, push: pushed };
}

const carried = (forces: Forces) =>
  new Map<string, number>([
    ...forces.contacts.map((c) => [c.id, c.normal] as const),
    ...[...forces.struts, ...forces.ties].map((e) => [e.id, e.force] as const),
  ]);

const weightOf = ({ scene }: RandomScene) =>
  [...scene.bodies, ...scene.feet].reduce((sum, b) => sum + b.weight, 0);

/** Forces alike to 0.1 % of the weight, pushes to 0.1 %. Nothing is compared that is not there in both. */
function expectSame(seed: number, change: (random: RandomScene) => RandomScene, force = 1): void {
  const random = randomScene(seed);
  const changed = change(random);
  const [a, b] = [answer(random), answer(changed)];
  expect(b.kinds).toEqual(a.kinds);
  const weight = weightOf(random);
  expect([...b.normals.keys()].sort()).toEqual([...a.normals.keys()].sort());
  for (const [id, n] of a.normals)
    expect(Math.abs((b.normals.get(id) ?? Number.NaN) / force - n)).toBeLessThanOrEqual(1e-3 * weight);
  if (a.push !== undefined)
    expect(Math.abs((b.push ?? Number.NaN) / force - a.push)).toBeLessThanOrEqual(
      1e-3 * Math.max(weight, a.push),
    );
}

/** The scene with every vector put through `f`. */
function mapped(random: RandomScene, f: (v: Vector) => Vector): RandomScene {
  const { scene, push: of } = random;
  const end = <E extends { readonly at: Vector }>(e: E): E => ({ ...e, at: f(e.at) });
  const contact = (c: Contact): Contact => ({
    ...c,
    at: f(c.at),
    normal: f(c.normal),
    ...(c.rolling === undefined ? {} : { rolling: { ...c.rolling, along: f(c.rolling.along) } }),
  });
  return {
    ...random,
    scene: {
      ...scene,
      bodies: scene.bodies.map((b) => ({ ...b, center: f(b.center) })),
      feet: scene.feet.map(end),
      contacts: scene.contacts.map(contact),
      struts: scene.struts.map((s) => ({ ...s, head: end(s.head), foot: end(s.foot) })),
      ties: scene.ties.map((t) => ({ ...t, from: end(t.from), to: end(t.to) })),
      loads: scene.loads.map((l) => ({ ...l, at: f(l.at), force: f(l.force) })),
      gravity: f(scene.gravity),
    },
    push: { ...of, at: f(of.at), direction: f(of.direction) },
  };
}

describe('the same scene, written otherwise', () => {
  it('mirrored', () => {
    fc.assert(
      fc.property(seeds, (seed) => expectSame(seed, (r) => mapped(r, (v) => at(v.x, -v.y, v.z)))),
      runs,
    );
  });
  it('turned about z', () => {
    const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
    fc.assert(
      fc.property(seeds, (seed) =>
        expectSame(seed, (r) => mapped(r, (v) => at(c * v.x - s * v.y, s * v.x + c * v.y, v.z))),
      ),
      runs,
    );
  });
  it('with bodies, feet and elements in another order', () => {
    const turned = (r: RandomScene): RandomScene => ({
      ...r,
      scene: {
        ...r.scene,
        bodies: [...r.scene.bodies].reverse(),
        feet: [...r.scene.feet].reverse(),
        contacts: [...r.scene.contacts].reverse(),
        struts: [...r.scene.struts].reverse(),
        ties: [...r.scene.ties].reverse(),
      },
    });
    fc.assert(
      fc.property(seeds, (seed) => expectSame(seed, turned)),
      runs,
    );
  });
  it('with its two bodies named the other way round', () => {
    const other = (id: string) => (id === 'body' ? 'under' : id === 'under' ? 'body' : id);
    const holder = (on: Holder): Holder => (on.kind === 'body' ? { kind: 'body', id: other(on.id) } : on);
    const renamed = (r: RandomScene): RandomScene => ({
      ...r,
      scene: {
        ...r.scene,
        bodies: r.scene.bodies.map((b) => ({ ...b, id: other(b.id) })),
        contacts: r.scene.contacts.map((c) => ({ ...c, upper: holder(c.upper), lower: holder(c.lower) })),
        struts: r.scene.struts.map((s) => ({
          ...s,
          head: { ...s.head, on: holder(s.head.on) },
          foot: { ...s.foot, on: holder(s.foot.on) },
        })),
        ties: r.scene.ties.map((t) => ({
          ...t,
          from: { ...t.from, on: holder(t.from.on) },
          to: { ...t.to, on: holder(t.to.on) },
        })),
        loads: r.scene.loads.map((l) => ({ ...l, on: holder(l.on) })),
      },
      push: { ...r.push, body: other(r.push.body) } satisfies Push,
    });
    fc.assert(
      fc.property(seeds, (seed) => expectSame(seed, renamed)),
      runs,
    );
  });
  it('in pounds and feet', () => {
    const force = 0.2248089431;
    const length = 3.280839895;
    fc.assert(
      fc.property(seeds, (seed) => expectSame(seed, (r) => scaled(r, force, length), force)),
      runs,
    );
  });
  it('a thousand times as heavy and stiff, ten times as large', () => {
    fc.assert(
      fc.property(seeds, (seed) => expectSame(seed, (r) => scaled(r, 1000, 10), 1000)),
      runs,
    );
  });
});

/** The scene in units of which so many make a newton, and a meter. */
function scaled(random: RandomScene, force: number, length: number): RandomScene {
  const long = mapped(random, (v) => v);
  const place3 = (v: Vector) => at(v.x * length, v.y * length, v.z * length);
  const stiff = force / length;
  const times = (v: number | undefined, k: number) => (v === undefined ? undefined : v * k);
  const given = <T extends object>(values: T): T =>
    Object.fromEntries(Object.entries(values).filter(([, v]) => v !== undefined)) as T;
  const { scene } = long;
  const changed: Scene = {
    ...scene,
    bodies: scene.bodies.map((b) => ({ ...b, weight: b.weight * force, center: place3(b.center) })),
    feet: scene.feet.map((f) => ({ ...f, weight: f.weight * force, at: place3(f.at) })),
    contacts: scene.contacts.map((c) =>
      given({
        ...c,
        at: place3(c.at),
        stiffness: c.stiffness * stiff,
        shearStiffness: c.shearStiffness * stiff,
        gap: times(c.gap, length),
        preload: times(c.preload, force),
        capacity: times(c.capacity, force),
      }),
    ) as readonly Contact[],
    struts: scene.struts.map((s) =>
      given({
        ...s,
        head: { ...s.head, at: place3(s.head.at) },
        foot: { ...s.foot, at: place3(s.foot.at) },
        stiffness: s.stiffness * stiff,
        gap: times(s.gap, length),
        preload: times(s.preload, force),
        capacity: times(s.capacity, force),
      }),
    ) as Scene['struts'],
    ties: scene.ties.map((t) =>
      given({
        ...t,
        from: { ...t.from, at: place3(t.from.at) },
        to: { ...t.to, at: place3(t.to.at) },
        stiffness: t.stiffness * stiff,
        slack: times(t.slack, length),
        pretension: times(t.pretension, force),
        capacity: times(t.capacity, force),
      }),
    ) as Scene['ties'],
    loads: scene.loads.map((l) => ({
      ...l,
      at: place3(l.at),
      force: at(l.force.x * force, l.force.y * force, l.force.z * force),
    })),
    movementLimit: scene.movementLimit * length,
  };
  return { ...long, scene: changed, push: { ...long.push, at: place3(long.push.at) } };
}

import type { Holder, Scene, Vector } from './scene.js';
import { minus, size } from './vector.js';

/** Why a scene cannot be asked anything. */
export type SceneProblem =
  | { readonly kind: 'same id twice'; readonly id: string }
  | { readonly kind: 'acts on nothing'; readonly id: string; readonly on: string }
  | { readonly kind: 'not a number'; readonly id: string; readonly property: string }
  | { readonly kind: 'must be above zero'; readonly id: string; readonly property: string }
  | { readonly kind: 'must not be below zero'; readonly id: string; readonly property: string }
  | { readonly kind: 'must have length 1'; readonly id: string; readonly property: string }
  | { readonly kind: 'has no length'; readonly id: string };

const known = new WeakMap<Scene, readonly SceneProblem[]>();

/** All that is wrong with a scene; nothing where it can be asked. A scene is looked through once. */
export function problemsOf(scene: Scene): readonly SceneProblem[] {
  const before = known.get(scene);
  if (before !== undefined) return before;
  const problems = look(scene);
  known.set(scene, problems);
  return problems;
}

function look(scene: Scene): readonly SceneProblem[] {
  const problems: SceneProblem[] = [];
  const number = (id: string, property: string, value: number, least?: 'above zero' | 'not below zero') => {
    if (!Number.isFinite(value)) problems.push({ kind: 'not a number', id, property });
    else if (least === 'above zero' && !(value > 0))
      problems.push({ kind: 'must be above zero', id, property });
    else if (least === 'not below zero' && value < 0)
      problems.push({ kind: 'must not be below zero', id, property });
  };
  const place = (id: string, property: string, v: Vector) => number(id, property, v.x + v.y + v.z);
  const direction = (id: string, property: string, v: Vector) => {
    if (!(Math.abs(size(v) - 1) <= 1e-9)) problems.push({ kind: 'must have length 1', id, property });
  };
  const rest = (id: string, values: Readonly<Record<string, number | undefined>>) => {
    for (const [property, value] of Object.entries(values))
      if (value !== undefined) number(id, property, value, 'not below zero');
  };
  const bodies = new Set(scene.bodies.map((b) => b.id));
  const feet = new Set(scene.feet.map((f) => f.id));
  const holder = (id: string, on: Holder) => {
    if ((on.kind === 'body' && !bodies.has(on.id)) || (on.kind === 'foot' && !feet.has(on.id)))
      problems.push({ kind: 'acts on nothing', id, on: on.id });
  };

  const seen = new Set<string>();
  for (const { id } of [...scene.bodies, ...scene.feet, ...scene.contacts, ...scene.struts, ...scene.ties]) {
    if (seen.has(id)) problems.push({ kind: 'same id twice', id });
    seen.add(id);
  }
  number('scene', 'movementLimit', scene.movementLimit, 'above zero');
  direction('scene', 'gravity', scene.gravity);
  for (const b of scene.bodies) {
    number(b.id, 'weight', b.weight, 'above zero');
    place(b.id, 'center', b.center);
  }
  for (const f of scene.feet) {
    number(f.id, 'weight', f.weight, 'above zero');
    place(f.id, 'at', f.at);
  }
  for (const c of scene.contacts) {
    holder(c.id, c.upper);
    holder(c.id, c.lower);
    place(c.id, 'at', c.at);
    direction(c.id, 'normal', c.normal);
    if (c.rolling !== undefined) direction(c.id, 'rolling', c.rolling.along);
    number(c.id, 'stiffness', c.stiffness, 'above zero');
    number(c.id, 'shearStiffness', c.shearStiffness, 'above zero');
    rest(c.id, { friction: c.friction, gap: c.gap, preload: c.preload, capacity: c.capacity });
  }
  const axial = (id: string, a: { on: Holder; at: Vector }, b: { on: Holder; at: Vector }, k: number) => {
    for (const end of [a, b]) {
      holder(id, end.on);
      place(id, 'at', end.at);
    }
    number(id, 'stiffness', k, 'above zero');
    if (!(size(minus(a.at, b.at)) > 0)) problems.push({ kind: 'has no length', id });
  };
  for (const s of scene.struts) {
    axial(s.id, s.head, s.foot, s.stiffness);
    rest(s.id, { gap: s.gap, preload: s.preload, capacity: s.capacity });
  }
  for (const t of scene.ties) {
    axial(t.id, t.from, t.to, t.stiffness);
    rest(t.id, { slack: t.slack, pretension: t.pretension, capacity: t.capacity });
  }
  for (const [i, l] of scene.loads.entries()) {
    holder(`load ${i}`, l.on);
    place(`load ${i}`, 'at', l.at);
    place(`load ${i}`, 'force', l.force);
  }
  return problems;
}

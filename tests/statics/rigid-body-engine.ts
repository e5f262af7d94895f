import type { statics } from '@cribwright/engine';
import loadMujoco from '@mujoco/mujoco';

type Vector = statics.Vector;

const standardGravity = 9.80665;
const step = 0.001;
/** Seconds: the push grows, then stands. */
const [ramp, hold] = [1, 1.5];

/** What the general rigid-body engine makes of a scene, in its own dynamics of time steps, contacts and friction. */
export interface RigidBodyEngine {
  /** The largest push, N, under which it is still at rest, to a part in 500, found between 0 and `most`. */
  readonly push: (scene: statics.Scene, push: statics.Push, most: number) => number;
  /** N that an element carries once it has come to rest: along the normal, or along itself. */
  readonly carried: (scene: statics.Scene, id: string) => number;
  /** Whether it is at rest after a while. */
  readonly rests: (scene: statics.Scene) => boolean;
}

/** MuJoCo. Contacts are small balls on plates, struts and ties are length limits; all nearly rigid. */
export async function rigidBodyEngine(): Promise<RigidBodyEngine> {
  const mujoco = await loadMujoco();
  const run = (scene: statics.Scene, push: statics.Push | undefined, size: number) => {
    const model = mujoco.MjModel.from_xml_string(mjcf(scene));
    const data = new mujoco.MjData(model);
    const steps = Math.round((ramp + hold) / step);
    const forces = appliedForces(scene, push);
    let fast = false;
    for (let i = 0; i < steps && !fast; i++) {
      const share = Math.min(1, (i * step) / ramp);
      for (const [row, { always, pushed }] of forces.entries())
        for (let k = 0; k < 6; k++)
          // The world is body 0.
          data.xfrc_applied[6 * (row + 1) + k] =
            (always[k] ?? 0) * Math.min(1, 5 * share) + size * share * (pushed[k] ?? 0);
      mujoco.mj_step(model, data);
      fast = i > 600 && largest(data.qvel) > 0.5;
    }
    const speed = fast ? Number.POSITIVE_INFINITY : largest(data.qvel);
    const sensed = Array.from(data.sensordata as ArrayLike<number>, Math.abs);
    data.delete();
    model.delete();
    return { speed, sensed };
  };
  return {
    push: (scene, push, most) => {
      let [low, high] = [0, most];
      while (high - low > most / 500) {
        const middle = (low + high) / 2;
        if (run(scene, push, middle).speed < 5e-3) low = middle;
        else high = middle;
      }
      return (low + high) / 2;
    },
    carried: (scene, id) => run(scene, undefined, 0).sensed[elementsOf(scene).indexOf(id)] ?? Number.NaN,
    rests: (scene) => run(scene, undefined, 0).speed < 5e-3,
  };
}

function largest(of: ArrayLike<number>): number {
  return Array.from(of).reduce((most, v) => Math.max(most, Math.abs(v)), 0);
}

const elementsOf = (scene: statics.Scene): readonly string[] =>
  [...scene.contacts, ...scene.struts, ...scene.ties].map((e) => e.id);

/** Force and moment about the center of gravity of each body and foot, in the order of the scene. */
function appliedForces(scene: statics.Scene, push: statics.Push | undefined) {
  const wrench = (center: Vector, at: Vector, f: Vector): number[] => {
    const [x, y, z] = [at.x - center.x, at.y - center.y, at.z - center.z];
    return [f.x, f.y, f.z, y * f.z - z * f.y, z * f.x - x * f.z, x * f.y - y * f.x];
  };
  const sum = (of: readonly number[][]) =>
    of.reduce((a, b) => a.map((v, i) => v + (b[i] ?? 0)), [0, 0, 0, 0, 0, 0]);
  return [
    ...scene.bodies.map((b) => ({
      always: sum(
        scene.loads.flatMap((l) =>
          l.on.kind === 'body' && l.on.id === b.id ? [wrench(b.center, l.at, l.force)] : [],
        ),
      ),
      pushed: push?.body === b.id ? wrench(b.center, push.at, push.direction) : [],
    })),
    ...scene.feet.map(() => ({ always: [], pushed: [] })),
  ];
}

const three = (v: Vector): string => `${v.x} ${v.y} ${v.z}`;
const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const name = (text: string): string => text.replace(/[^A-Za-z0-9]/g, '_');
const radius = 0.02;

function mjcf(scene: statics.Scene): string {
  const world: string[] = [];
  const parts = new Map<string, string[]>([...scene.bodies, ...scene.feet].map((b) => [b.id, []]));
  const places = new Map<string, Vector>([
    ...scene.bodies.map((b) => [b.id, b.center] as const),
    ...scene.feet.map((f) => [f.id, f.at] as const),
  ]);
  const put = (on: statics.Holder, at: Vector, text: (local: string) => string) => {
    if (on.kind === 'ground') world.push(text(three(at)));
    else parts.get(on.id)?.push(text(three(minus(at, places.get(on.id) ?? at))));
  };
  const pairs: string[] = [];
  const sensors: string[] = [];
  for (const c of scene.contacts) {
    const n = name(c.id);
    const along = (d: number): Vector => ({
      x: c.at.x + d * c.normal.x,
      y: c.at.y + d * c.normal.y,
      z: c.at.z + d * c.normal.z,
    });
    put(
      c.upper,
      along(radius),
      (p) =>
        `<geom name="ball ${n}" type="sphere" size="${radius}" pos="${p}" mass="0" contype="0" conaffinity="0"/>` +
        `<site name="at ${n}" type="sphere" size="${3 * radius}" pos="${p}"/>`,
    );
    put(
      c.lower,
      along(-0.05),
      (p) =>
        `<geom name="plate ${n}" type="box" size="0.3 0.3 0.05" pos="${p}" zaxis="${three(c.normal)}" mass="0" contype="0" conaffinity="0"/>`,
    );
    pairs.push(
      `<pair geom1="ball ${n}" geom2="plate ${n}" condim="3" friction="${c.friction} ${c.friction} 0 0 0" solref="0.004 1" solimp="0.99 0.999 0.0001"/>`,
    );
    sensors.push(`<touch site="at ${n}"/>`);
  }
  const tendons: string[] = [];
  const limit = (id: string, a: statics.End, b: statics.End, pushes: boolean) => {
    const n = name(id);
    for (const [end, which] of [
      [a, 'a'],
      [b, 'b'],
    ] as const)
      put(end.on, end.at, (p) => `<site name="${which} ${n}" pos="${p}" size="0.001"/>`);
    const long = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y, a.at.z - b.at.z);
    tendons.push(
      `<spatial name="${n}" limited="true" range="${pushes ? `${long} 1000` : `0 ${long}`}" solreflimit="0.004 1" solimplimit="0.99 0.999 0.0001"><site site="a ${n}"/><site site="b ${n}"/></spatial>`,
    );
    sensors.push(`<tendonlimitfrc tendon="${n}"/>`);
  };
  for (const s of scene.struts) limit(s.id, s.head, s.foot, true);
  for (const t of scene.ties) limit(t.id, t.from, t.to, false);
  const g = scene.gravity;
  return `<mujoco>
<option timestep="${step}" gravity="${g.x * standardGravity} ${g.y * standardGravity} ${g.z * standardGravity}" cone="elliptic" impratio="100" solver="Newton" iterations="200" tolerance="1e-12" integrator="implicitfast"/>
<worldbody>${world.join('')}
${scene.bodies
  .map((b) => {
    const mass = b.weight / standardGravity;
    return `<body pos="${three(b.center)}"><freejoint/><inertial pos="0 0 0" mass="${mass}" diaginertia="${mass} ${mass} ${mass}"/>${parts.get(b.id)?.join('')}</body>`;
  })
  .join('\n')}
${scene.feet
  .map((f) => {
    const mass = f.weight / standardGravity;
    const slides = ['1 0 0', '0 1 0', '0 0 1'].map((axis) => `<joint type="slide" axis="${axis}"/>`).join('');
    return `<body pos="${three(f.at)}">${slides}<inertial pos="0 0 0" mass="${mass}" diaginertia="${mass} ${mass} ${mass}"/>${parts.get(f.id)?.join('')}</body>`;
  })
  .join('\n')}
</worldbody>
<contact>${pairs.join('')}</contact>
<tendon>${tendons.join('')}</tendon>
<sensor>${sensors.join('')}</sensor>
</mujoco>`;
}

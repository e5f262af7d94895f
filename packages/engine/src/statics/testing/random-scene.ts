import type { Contact, Foot, Push, Scene, Strut, Tie } from '../scene.js';
import {
  at,
  body,
  contact,
  degrees,
  end,
  footContact,
  ground,
  onBody,
  onFoot,
  sceneOf,
  toward,
} from './sample-scenes.js';

/** Numbers from 0 up to 1. */
export type Next = () => number;

/** The same numbers at every run, from a seed (mulberry32). */
export function numbersFrom(seed: number): Next {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A scene, what may be lost in it, what is placed after it first rests, and a push. */
export interface RandomScene {
  readonly scene: Scene;
  readonly later: readonly string[];
  readonly lost: readonly string[];
  readonly push: Push;
}

/**
 * A vehicle on four to eight supports, in two of five on another vehicle; up to four raked struts, tied or not; straps
 * to anchors; snug or wedged cribs that come later; wheels free or chocked; a grade; a tool. Ranges as in a real
 * incident, and beyond: stiffness over three orders, friction from ice to rubber.
 */
export function randomScene(seed: number): RandomScene {
  const next = numbersFrom(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const chance = (of: number) => next() < of;
  const stiffness = () => 10 ** between(5.3, 8.3);

  const two = chance(0.4);
  const weight = 10 ** between(4, 5.7);
  const base = two ? 1.2 : 0;
  const bodies = [
    body(weight, at(between(1.5, 4.5), between(-0.3, 0.3), base + between(0.6, 2)), 'body'),
    ...(two ? [body(10 ** between(4, 5.3), at(between(2, 4), between(-0.2, 0.2), 0.6), 'under')] : []),
  ];
  const support = (id: string, x: number, y: number, z: number, parts: Partial<Contact> = {}): Contact => {
    const k = stiffness();
    return contact(id, at(x, y, z), {
      stiffness: k,
      shearStiffness: k * between(0.2, 1),
      friction: between(0.05, 0.9),
      ...(chance(0.3) ? { capacity: 10 ** between(4, 6) } : {}),
      ...parts,
    });
  };
  const wheels = chance(0.5);
  const rolling = (): Partial<Contact> =>
    wheels ? { rolling: { along: at(1, 0, 0), stopsForward: chance(0.4), stopsBack: chance(0.4) } } : {};
  const contacts: Contact[] = [];
  const later: string[] = [];
  const corners = (id: string, z: number, parts: () => Partial<Contact>) => {
    for (const x of [between(0, 1), between(5, 6)])
      for (const y of [-1, 1])
        contacts.push(support(`${id} ${contacts.length}`, x, y * between(0.7, 1.2), z, parts()));
  };
  if (two) {
    corners('under', 0, () => ({ upper: onBody('under'), ...rolling() }));
    corners('between', base, () => ({ lower: onBody('under') }));
  } else corners('wheel', 0, rolling);
  for (let i = whole(0, 4); i > 0; i--) {
    const id = `crib ${i}`;
    const onGround = !two || chance(0.7);
    contacts.push(
      support(id, between(0, 6), between(-1.2, 1.2), base, {
        ...(onGround ? {} : { lower: onBody('under') }),
        ...(chance(0.3) ? { preload: between(0, 0.05) * weight } : {}),
        ...(chance(0.3) ? { gap: between(0, 0.02) } : {}),
      }),
    );
    if (chance(0.7)) later.push(id);
  }
  const feet: Foot[] = [];
  const struts: Strut[] = [];
  const ties: Tie[] = [];
  for (let i = whole(0, 4); i > 0; i--) {
    const side = chance(0.5) ? -1 : 1;
    const x = between(0, 6);
    const head = at(x, side * 1.2, base + between(0.8, 2.2));
    const place = at(x + between(-0.3, 0.3), side * (1.2 + head.z / Math.tan(degrees(between(35, 75)))), 0);
    const id = `foot ${i}`;
    feet.push({ id, at: place, weight: between(30, 300) });
    contacts.push(footContact(id, place, between(0.1, 0.8), { stiffness: stiffness() }));
    struts.push({
      id: `strut ${i}`,
      head: end(onBody(), head),
      foot: end(onFoot(id), place),
      stiffness: 10 ** between(6, 7.7),
      ...(chance(0.3) ? { preload: between(0, 0.02) * weight } : {}),
      ...(chance(0.5) ? { capacity: 10 ** between(4, 5.5) } : {}),
    });
    if (chance(0.6)) {
      const anchor = chance(0.5)
        ? end(ground, at(place.x, 0, 0))
        : end(onBody(two ? 'under' : 'body'), at(place.x, side * 0.9, 0.3));
      ties.push({
        id: `tie ${i}`,
        from: end(onFoot(id), place),
        to: anchor,
        stiffness: 10 ** between(5, 6.5),
        ...(chance(0.5) ? { capacity: 10 ** between(3.7, 5) } : {}),
      });
    }
    if (chance(0.4)) later.push(`strut ${i}`, id, `under ${id}`, `tie ${i}`);
  }
  for (let i = whole(0, 2); i > 0; i--)
    ties.push({
      id: `guy ${i}`,
      from: end(onBody(), at(between(0, 6), between(-1, 1), base + between(1, 2))),
      to: end(ground, at(between(-3, 9), (chance(0.5) ? -1 : 1) * between(3, 6), 0)),
      stiffness: 10 ** between(5, 6.5),
      ...(chance(0.5) ? { pretension: between(0, 0.02) * weight } : { slack: between(0, 0.02) }),
    });
  const steep = degrees(chance(0.3) ? between(-8, 8) : 0);
  const lostOf = [...contacts, ...struts, ...ties];
  const lost = lostOf[whole(0, lostOf.length - 1)]?.id ?? '';
  const scene = sceneOf({
    bodies,
    feet,
    contacts,
    struts,
    ties,
    gravity: at(-Math.sin(steep), 0, -Math.cos(steep)),
    loads: chance(0.3)
      ? [
          {
            on: onBody(),
            at: at(between(0, 6), between(-1, 1), base + between(0.5, 2)),
            force: at(
              between(-1, 1) * 0.1 * weight,
              between(-1, 1) * 0.1 * weight,
              between(-1, 1) * 0.1 * weight,
            ),
          },
        ]
      : [],
    movementLimit: between(0.1, 0.5),
  });
  return {
    scene,
    later,
    lost: [lost],
    push: {
      body: 'body',
      at: at(between(0, 6), 0, base + between(0.3, 2.5)),
      direction: toward(15 * whole(0, 23)),
    },
  };
}

import { unknownsOf } from './forces.js';
import { relativeMove } from './link-law.js';
import { modelOf } from './model.js';
import type { Scene } from './scene.js';
import type { State } from './state.js';
import { dot, minus } from './vector.js';

/**
 * Puts bodies, feet and elements that wait where they belong, snug: an element carries nothing but its preload until
 * something moves. Let it settle afterward. Ids that do not wait are left as they are.
 */
export function place(scene: Scene, state: State, ids: Iterable<string>): State {
  const named = new Set(ids);
  const put = <S extends { readonly presence: string }>(
    rows: readonly S[],
    of: readonly { readonly id: string }[],
  ) =>
    rows.map((s, i) =>
      s.presence === 'waiting' && named.has(of[i]?.id ?? '') ? { ...s, presence: 'there' as const } : s,
    );
  const placed: State = {
    bodies: put(state.bodies, scene.bodies),
    feet: put(state.feet, scene.feet),
    contacts: put(state.contacts, scene.contacts),
    struts: put(state.struts, scene.struts),
    ties: put(state.ties, scene.ties),
  };
  const model = modelOf(scene, placed);
  const q = unknownsOf(model, placed);
  const contacts = [...placed.contacts];
  const struts = [...placed.struts];
  const ties = [...placed.ties];
  for (const link of model.links) {
    const isNew = (rows: readonly { readonly presence: string }[]) => rows[link.row]?.presence === 'waiting';
    const g = relativeMove(q, link);
    const along = dot(g, link.axis);
    const zero = -along * model.length;
    if (link.kind === 'contact' && isNew(state.contacts)) {
      const across = minus(g, { x: link.axis.x * along, y: link.axis.y * along, z: link.axis.z * along });
      const slip = { x: across.x * model.length, y: across.y * model.length, z: across.z * model.length };
      contacts[link.row] = { presence: 'there', zero, slip, friction: { x: 0, y: 0, z: 0 } };
    }
    if (link.kind === 'strut' && isNew(state.struts)) struts[link.row] = { presence: 'there', zero };
    if (link.kind === 'tie' && isNew(state.ties)) ties[link.row] = { presence: 'there', zero };
  }
  return { ...placed, contacts, struts, ties };
}

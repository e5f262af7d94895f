import type { Holder, Scene } from './scene.js';
import type { State } from './state.js';

/**
 * Takes things away, with all that goes with them: what acts on a lost body or foot; the foot of a lost strut that
 * holds no other; a foot under which the ground is lost. So the ties of a strut go with its foot. Let it settle
 * afterward.
 */
export function lose(scene: Scene, state: State, ids: Iterable<string>): State {
  const lost = new Set(ids);
  const there = <T>(of: readonly T[], rows: readonly { readonly presence: string }[]) =>
    of.filter((_, i) => rows[i]?.presence === 'there');
  const contacts = there(scene.contacts, state.contacts);
  const struts = there(scene.struts, state.struts);
  const isOn = (on: Holder, foot: string) => on.kind === 'foot' && on.id === foot;
  const isGone = (on: Holder) => on.kind !== 'ground' && lost.has(on.id);
  for (let before = -1; before !== lost.size; ) {
    before = lost.size;
    for (const { id } of there(scene.feet, state.feet)) {
      const stands = contacts.some((c) => isOn(c.upper, id) && !lost.has(c.id));
      const holds = struts.some((s) => isOn(s.foot.on, id) && !lost.has(s.id));
      const stood = contacts.some((c) => isOn(c.upper, id));
      const held = struts.some((s) => isOn(s.foot.on, id));
      if ((stood && !stands) || (held && !holds)) lost.add(id);
    }
    for (const c of scene.contacts) if (isGone(c.upper) || isGone(c.lower)) lost.add(c.id);
    for (const s of scene.struts) if (isGone(s.head.on) || isGone(s.foot.on)) lost.add(s.id);
    for (const t of scene.ties) if (isGone(t.from.on) || isGone(t.to.on)) lost.add(t.id);
  }
  const take = <S extends { readonly presence: string }>(
    rows: readonly S[],
    of: readonly { readonly id: string }[],
  ) => rows.map((s, i) => (lost.has(of[i]?.id ?? '') ? { ...s, presence: 'lost' as const } : s));
  return {
    bodies: take(state.bodies, scene.bodies),
    feet: take(state.feet, scene.feet),
    contacts: take(state.contacts, scene.contacts),
    struts: take(state.struts, scene.struts),
    ties: take(state.ties, scene.ties),
  };
}

import { type HeldPush, heldPush, type PushContact, type PushSystem, type Vector } from '@cribwright/engine';

export const at = (x: number, y: number, z: number): Vector => ({ x, y, z });
export const down: Vector = at(0, 0, -1);
const degree = Math.PI / 180;

/** A level direction, counted as the engine does: 0 pushes toward the rear (+x), 90 deg to the passenger side (+y). */
export const toward = (degrees: number): Vector =>
  at(Math.cos(degrees * degree), Math.sin(degrees * degree), 0);

export const standing = (parts: Partial<PushSystem>): PushSystem => ({
  bodies: [],
  contacts: [],
  stacks: [],
  struts: [],
  ties: [],
  loads: [],
  gravity: down,
  ...parts,
});

/** Four corners of a base under a body, x from 0. */
export const corners = (length: number, width: number, friction: number): readonly PushContact[] =>
  [0, length].flatMap((x) =>
    [-width / 2, width / 2].map((y) => ({
      id: `${x} ${y}`,
      upper: 'body',
      lower: 'ground' as const,
      at: at(x, y, 0),
      friction,
    })),
  );

/** A box of weight W on its base, its center at half its height. */
export const box = (
  size: { readonly length: number; readonly width: number; readonly height: number },
  friction: number,
  weight = 1,
): PushSystem =>
  standing({
    bodies: [{ id: 'body', weight, center: at(size.length / 2, 0, size.height / 2) }],
    contacts: corners(size.length, size.width, friction),
  });

/** N; no number where it cannot stand. */
export const holds = (system: PushSystem, place: Vector, direction: Vector): number => {
  const found: HeldPush = heldPush(system, { body: 'body', at: place, direction });
  return found.kind === 'holds' ? found.force : Number.NaN;
};

/** The least number between two at which something stands, to twelve digits: it must not stand at the low one. */
export function leastThatStands(low: number, high: number, stands: (value: number) => boolean): number {
  if (stands(low) || !stands(high)) return Number.NaN;
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (stands(middle)) b = middle;
    else a = middle;
  }
  return b;
}

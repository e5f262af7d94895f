import type { SpaceScene } from '@cribwright/drawing/page';
import { type Camera, Vector3 } from 'three';

type Thing = SpaceScene['things'][number];

interface Named {
  readonly thing: Thing;
  readonly top: Vector3;
  readonly tag: HTMLElement;
}

const signs = { danger: '▲', warning: '◆', note: '●' } as const;
const ranks = { danger: 0, warning: 1, note: 2 } as const;

/**
 * Names over what stands in space, each with the sign of its gravest finding. Where two would lie over each other the
 * graver one stays. The canvas and the words below say the same to a reader.
 */
export class SpaceLabels {
  private named: readonly Named[] = [];

  constructor(private readonly box: HTMLElement) {}

  show(things: readonly Thing[]): void {
    this.clear();
    this.named = [...things]
      .filter((thing) => thing.label !== undefined && thing.standing !== 'later' && thing.solids.length > 0)
      .sort((a, b) => rank(a) - rank(b))
      .map((thing) => {
        const tag = document.createElement('span');
        tag.className = thing.worst === undefined ? 'space-label' : `space-label ${thing.worst}`;
        tag.textContent = `${thing.worst === undefined ? '' : `${signs[thing.worst]} `}${thing.label ?? ''}`;
        tag.setAttribute('aria-hidden', 'true');
        this.box.append(tag);
        return { thing, top: topOf(thing), tag };
      });
  }

  /** Puts each name where its shape is seen now. */
  place(camera: Camera): void {
    const [wide, high] = [this.box.clientWidth, this.box.clientHeight];
    const taken: { left: number; right: number; top: number; bottom: number }[] = [];
    for (const { top, tag } of this.named) {
      const spot = top.clone().project(camera);
      const [x, y] = [((spot.x + 1) / 2) * wide, ((1 - spot.y) / 2) * high];
      const [w, h] = [tag.offsetWidth, tag.offsetHeight];
      const own = { left: x - w / 2, right: x + w / 2, top: y - h - 3, bottom: y - 3 };
      const clear =
        Math.abs(spot.z) <= 1 &&
        own.left >= 0 &&
        own.right <= wide &&
        own.top >= 0 &&
        !taken.some(
          (t) => t.left < own.right && own.left < t.right && t.top < own.bottom && own.top < t.bottom,
        );
      tag.style.visibility = clear ? 'visible' : 'hidden';
      if (!clear) continue;
      taken.push(own);
      tag.style.transform = `translate(${Math.round(own.left)}px, ${Math.round(own.top)}px)`;
    }
  }

  clear(): void {
    for (const { tag } of this.named) tag.remove();
    this.named = [];
  }
}

const rank = ({ worst }: Thing): number => (worst === undefined ? 3 : ranks[worst]);

/** Over the middle of a thing, at its highest. */
export function topOf({ solids }: Pick<Thing, 'solids'>): Vector3 {
  const points = solids.flatMap((s) => (s.kind === 'block' ? s.corners : [s.from, s.to]));
  const middle = (of: (p: { x: number; y: number; z: number }) => number) =>
    (Math.min(...points.map(of)) + Math.max(...points.map(of))) / 2;
  return new Vector3(
    middle((p) => p.x),
    middle((p) => p.y),
    Math.max(...points.map((p) => p.z)),
  );
}

import type { Drag, Scene } from '@cribwright/drawing/page';
import { show } from '@cribwright/units';
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { CanvasProps } from './canvas-props.js';
import { dragsOf } from './drags-of.js';
import { type Dropped, dropped } from './dropped.js';

/** Less than this is a click, px. */
const slack = 4;
/** How near a joist or rail attracts, px. */
const attracts = 9;

interface Grip {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  readonly drag: Drag | undefined;
  readonly scroll: { readonly left: number; readonly top: number };
  moving: boolean;
  now: Dropped | undefined;
}

/**
 * Drags shapes, and the drawing itself where there is no shape to grip. The drag is shown here alone; on letting
 * go the host is asked to change the text, and the drawing that comes back is what holds.
 *
 * @returns whether the last press was a drag, so that its click is not taken for one
 */
export function useDrag(box: RefObject<HTMLDivElement>, props: CanvasProps): () => boolean {
  const latest = useRef(props);
  latest.current = props;
  const wasDrag = useRef(false);

  useEffect(() => {
    const here = box.current;
    if (here === null) return;
    let grip: Grip | undefined;

    const down = (event: PointerEvent) => {
      if (event.button !== 0 || latest.current.inSpace) return;
      wasDrag.current = false;
      const { scene } = latest.current;
      const element = (event.target as Element).closest('[data-element]')?.getAttribute('data-element');
      grip = {
        pointer: event.pointerId,
        x: event.clientX,
        y: event.clientY,
        drag: element == null || scene.frame === undefined ? undefined : dragsOf(scene).get(element),
        scroll: { left: here.scrollLeft, top: here.scrollTop },
        moving: false,
        now: undefined,
      };
    };
    const move = (event: PointerEvent) => {
      if (grip === undefined || event.pointerId !== grip.pointer) return;
      const by = { x: event.clientX - grip.x, y: event.clientY - grip.y };
      if (!grip.moving && Math.hypot(by.x, by.y) < slack) return;
      if (!grip.moving) {
        grip.moving = true;
        wasDrag.current = true;
        here.setPointerCapture(event.pointerId);
      }
      const { scene, say } = latest.current;
      if (grip.drag === undefined) {
        here.scrollTo(grip.scroll.left - by.x, grip.scroll.top - by.y);
        return;
      }
      if (grip.drag.fixed !== undefined) {
        say(grip.drag.fixed);
        return;
      }
      if (scene.frame === undefined) return;
      const perPixel = scene.width / (here.querySelector('svg')?.clientWidth ?? scene.width);
      grip.now = dropped(
        grip.drag,
        scene.frame,
        { x: by.x * perPixel, y: by.y * perPixel },
        attracts * perPixel,
      );
      shift(here, grip.drag.element, grip.now.shift);
      say(placeWords(grip.drag, grip.now, scene));
    };
    const end = (event: PointerEvent) => {
      if (grip === undefined || event.pointerId !== grip.pointer) return;
      const { drag, now, moving } = grip;
      grip = undefined;
      if (!moving || drag === undefined || now === undefined) return;
      if (event.type === 'pointercancel' || Object.keys(now.to).length === 0) shift(here, drag.element);
      else latest.current.act.move(drag, now.to);
    };
    const key = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || grip?.drag === undefined) return;
      shift(here, grip.drag.element);
      latest.current.say(undefined);
      grip = undefined;
    };
    here.addEventListener('pointerdown', down);
    here.addEventListener('pointermove', move);
    here.addEventListener('pointerup', end);
    here.addEventListener('pointercancel', end);
    window.addEventListener('keydown', key);
    return () => {
      here.removeEventListener('pointerdown', down);
      here.removeEventListener('pointermove', move);
      here.removeEventListener('pointerup', end);
      here.removeEventListener('pointercancel', end);
      window.removeEventListener('keydown', key);
    };
  }, []);

  // The drawing that comes back is what holds, moved or refused.
  useEffect(() => {
    for (const shape of box.current?.querySelectorAll('svg [data-shifted]') ?? []) unshift(shape);
  });
  return () => wasDrag.current;
}

function shift(box: Element, element: string, by?: { readonly x: number; readonly y: number }): void {
  for (const shape of box.querySelectorAll(`svg [data-element="${CSS.escape(element)}"]`)) {
    if (by === undefined) unshift(shape);
    else if (shape.parentElement?.closest('[data-shifted]') == null) {
      shape.setAttribute('transform', `translate(${by.x} ${by.y})`);
      shape.setAttribute('data-shifted', '');
    }
  }
}

const unshift = (shape: Element): void => {
  shape.removeAttribute('transform');
  shape.removeAttribute('data-shifted');
};

/** Where the shape is being taken to, in the reader's units. */
function placeWords(drag: Drag, { to, snapped }: Dropped, scene: Scene): string {
  const unit = scene.display === 'si' ? 'm' : 'ft in';
  const say = (meters: number) => show(meters, 'length', unit, { rounding: 'nearest' });
  const parts: string[] = [];
  const x = to.x ?? drag.from?.x;
  const y = to.y ?? drag.from?.y;
  if (x !== undefined) parts.push(`${say(x)} back${snapped.includes('x') ? ' (on a joist)' : ''}`);
  if (y !== undefined)
    parts.push(
      `${y < 0 ? 'driver' : 'passenger'} side ${say(Math.abs(y))}${snapped.includes('y') ? ' (on a rail)' : ''}`,
    );
  return `${drag.element.replace('/', ' ')}: ${parts.join(', ')}`;
}

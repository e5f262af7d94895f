import type { Scene } from '@cribwright/drawing/page';
import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { directions, nextShape } from './next-shape.js';

/** Every shape that has a name, in the order of the drawing. */
export const shapesIn = (box: Element): readonly SVGGElement[] => [
  ...box.querySelectorAll<SVGGElement>('svg g[role="graphics-object"]'),
];

/**
 * One shape at a time is in the order of the Tab key. Arrow keys go to the nearest shape that way, Page Down and
 * Page Up to the next and the one before in the order of the drawing, so that each can be reached.
 */
export function useRoving(box: RefObject<HTMLDivElement>, scene: Scene): void {
  const current = useRef<string>();
  useLayoutEffect(() => {
    if (box.current === null) return;
    const shapes = shapesIn(box.current);
    const chosen = shapes.find((s) => s.getAttribute('data-key') === current.current) ?? shapes[0];
    inOrder(shapes, chosen);
  }, [scene]);

  useEffect(() => {
    const here = box.current;
    if (here === null) return;
    const focused = (event: FocusEvent) => {
      const shapes = shapesIn(here);
      const shape = shapes.find((s) => s === event.target);
      if (shape === undefined) return;
      current.current = shape.getAttribute('data-key') ?? undefined;
      inOrder(shapes, shape);
    };
    const key = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey) return;
      const shapes = shapesIn(here);
      const from = shapes.indexOf(document.activeElement as SVGGElement);
      const way = directions[event.key];
      if (from < 0) return;
      const inTurn = { Home: 0, End: shapes.length - 1, PageDown: from + 1, PageUp: from - 1 }[event.key];
      const to = inTurn ?? (way === undefined ? undefined : nextShape(shapes.map(middleOf), from, way));
      if (to === undefined) return;
      event.preventDefault();
      shapes[Math.max(0, Math.min(to, shapes.length - 1))]?.focus();
    };
    here.addEventListener('focusin', focused);
    here.addEventListener('keydown', key);
    return () => {
      here.removeEventListener('focusin', focused);
      here.removeEventListener('keydown', key);
    };
  }, []);
}

/** Puts one shape in the order of the Tab key. Those that are right already are not touched. */
function inOrder(shapes: readonly Element[], chosen: Element | undefined): void {
  for (const shape of shapes) {
    const now = shape === chosen ? '0' : '-1';
    if (shape.getAttribute('tabindex') !== now) shape.setAttribute('tabindex', now);
  }
}

const middleOf = (shape: Element) => {
  const r = shape.getBoundingClientRect();
  return { x: r.left + r.width / 2, y: r.top + r.height / 2 };
};

/** @jsxRuntime automatic @jsxImportSource preact */

import { SceneSvg } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { Acts, CanvasProps } from './canvas-props.js';
import { useDrag } from './drag.js';
import { useLit } from './lit.js';
import { shapesIn, useRoving } from './roving.js';
import { SpacePlace } from './space-place.js';
import { useZoom } from './zoom.js';

/** The drawing itself: it scrolls and zooms, every shape can be reached with keys, clicked and, where it may, dragged. */
export function Canvas(props: CanvasProps): JSX.Element {
  const { scene, act } = props;
  const box = useRef<HTMLDivElement>(null);
  useZoom(box, props);
  useLit(box, props.lit, scene);
  useRoving(box, scene);
  const dragged = useDrag(box, props);

  // Another view starts at its top left corner.
  const view = useRef(scene.choice.view);
  useLayoutEffect(() => {
    if (view.current !== scene.choice.view) box.current?.scrollTo(0, 0);
    view.current = scene.choice.view;
  }, [scene.choice.view]);

  useEffect(() => {
    const here = box.current;
    if (here === null) return;
    const click = (event: MouseEvent) => {
      if (dragged()) return;
      const shape = (event.target as Element).closest('[data-element]');
      if (shape !== null) goTo(shape);
    };
    const goTo = (shape: Element) =>
      act.goTo(shape.getAttribute('data-element') ?? '', shape.getAttribute('data-property') ?? undefined);
    const key = (event: KeyboardEvent) => {
      const shape = shapesIn(here).find((s) => s === document.activeElement);
      const done = pressed(event, shape, act, goTo);
      if (done) event.preventDefault();
    };
    here.addEventListener('click', click);
    here.addEventListener('keydown', key);
    return () => {
      here.removeEventListener('click', click);
      here.removeEventListener('keydown', key);
    };
  });

  return (
    <div
      class="canvas"
      id="drawing"
      ref={box}
      role="tabpanel"
      aria-labelledby={`tab-${scene.choice.view.replaceAll(' ', '-')}`}
    >
      {props.inSpace && scene.space !== undefined ? (
        <SpacePlace scene={scene} lit={props.lit} act={act} say={props.say} />
      ) : (
        <div class="sheet">
          <SceneSvg scene={scene} />
        </div>
      )}
    </div>
  );
}

function pressed(
  event: KeyboardEvent,
  shape: Element | undefined,
  act: Acts,
  goTo: (shape: Element) => void,
): boolean {
  if (event.key === ',' || event.key === '.') {
    act.stage(event.key === '.' ? 1 : -1);
    return true;
  }
  if (shape === undefined) return false;
  if (event.key === 'Enter') {
    goTo(shape);
    return true;
  }
  const element = shape.getAttribute('data-element') ?? '';
  if (event.altKey && (event.key === 'ArrowUp' || event.key === 'ArrowDown') && element.startsWith('crib/')) {
    act.courses(element, event.key === 'ArrowUp' ? 1 : -1);
    return true;
  }
  return false;
}

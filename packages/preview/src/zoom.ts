import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { CanvasProps } from './canvas-props.js';
import { zoomTo } from './zoom-tools.js';

/** Narrower than this a sheet would show nothing any more, px; then it scrolls. Small words are read by zooming in. */
const leastWidth = 320;

/** A low panel makes a sheet no narrower than this, px: it scrolls down instead. */
const leastInLow = 600;

/** A sheet may be this much taller than the panel before it is made narrower than it. */
const overflow = 1.35;

/** Zooms by wheel with Ctrl, by keys and by the buttons; keeps the place under the pointer where it was. */
export function useZoom(box: RefObject<HTMLDivElement>, props: CanvasProps): void {
  const { scene, zoom, setZoom, pan, moved } = props;
  const anchor = useRef<{ x: number; y: number }>();
  const before = useRef(zoom);
  const rest = useRef(moved);
  rest.current = moved;

  useLayoutEffect(() => {
    const here = box.current;
    if (here === null) return;
    const fit = () => {
      const sheet = here.querySelector<HTMLElement>('.sheet');
      if (sheet === null) return;
      const wide = Math.max(
        leastWidth,
        Math.min(
          here.clientWidth,
          Math.max(leastInLow, (here.clientHeight * scene.width * overflow) / scene.height),
        ),
      );
      sheet.style.width = `${Math.round(wide * zoom)}px`;
    };
    fit();
    const watch = new ResizeObserver(fit);
    watch.observe(here);
    return () => watch.disconnect();
  }, [zoom, scene.width, scene.height, props.inSpace]);

  useLayoutEffect(() => {
    const here = box.current;
    if (here === null || before.current === zoom) return;
    const k = zoom / before.current;
    const at = anchor.current ?? { x: here.clientWidth / 2, y: here.clientHeight / 2 };
    here.scrollTo((here.scrollLeft + at.x) * k - at.x, (here.scrollTop + at.y) * k - at.y);
    anchor.current = undefined;
    before.current = zoom;
  }, [zoom]);

  useEffect(() => {
    const here = box.current;
    if (here === null) return;
    here.scrollTo(pan.current?.x ?? 0, pan.current?.y ?? 0);
    const scrolled = () => {
      pan.current = { x: here.scrollLeft, y: here.scrollTop };
    };
    const rested = () => rest.current();
    here.addEventListener('scroll', scrolled);
    here.addEventListener('scrollend', rested);
    return () => {
      here.removeEventListener('scroll', scrolled);
      here.removeEventListener('scrollend', rested);
    };
  }, []);

  useEffect(() => {
    const here = box.current;
    if (here === null) return;
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      const frame = here.getBoundingClientRect();
      anchor.current = { x: event.clientX - frame.left, y: event.clientY - frame.top };
      setZoom(zoomTo(zoom * Math.exp(-event.deltaY / 400)));
    };
    const key = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const next = { '+': zoom * 1.25, '=': zoom * 1.25, '-': zoom / 1.25, '0': 1 }[event.key];
      if (next === undefined) return;
      event.preventDefault();
      setZoom(zoomTo(next));
    };
    here.addEventListener('wheel', wheel, { passive: false });
    here.addEventListener('keydown', key);
    return () => {
      here.removeEventListener('wheel', wheel);
      here.removeEventListener('keydown', key);
    };
  }, [zoom, setZoom]);
}

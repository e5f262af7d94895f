import type { Scene } from '@cribwright/drawing/page';
import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/** Lights the shapes of one element. The drawing scrolls only if none of it is in sight. */
export function useLit(box: RefObject<HTMLDivElement>, lit: string | undefined, scene: Scene): void {
  useLayoutEffect(() => {
    const here = box.current;
    if (here === null) return;
    const before = [...here.querySelectorAll('svg [data-lit]')];
    const now =
      lit === undefined ? [] : [...here.querySelectorAll(`svg [data-element="${CSS.escape(lit)}"]`)];
    for (const shape of before) if (!now.includes(shape)) shape.removeAttribute('data-lit');
    for (const shape of now) shape.setAttribute('data-lit', '');
    const [first] = now;
    if (first !== undefined && !now.some((s) => inSight(s, here)))
      first.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [lit, scene]);
}

const inSight = (shape: Element, box: Element): boolean => {
  const [s, b] = [shape.getBoundingClientRect(), box.getBoundingClientRect()];
  return s.right > b.left && s.left < b.right && s.bottom > b.top && s.top < b.bottom;
};

/** @jsxRuntime automatic @jsxImportSource preact */
import type { Scene } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Acts } from './canvas-props.js';
import type { SpaceView } from './space-view.js';

/** The place of the view in space. What draws it is loaded only when it is first asked for. */
export function SpacePlace(props: {
  readonly scene: Scene;
  readonly lit: string | undefined;
  readonly act: Acts;
  readonly say: (text: string) => void;
}): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const view = useRef<SpaceView>();
  const [flat, setFlat] = useState(false);
  const { scene, lit, act, say } = props;

  useEffect(() => {
    let gone = false;
    void (async () => {
      try {
        const { openSpace } = await import('./space-view.js');
        if (gone || box.current === null) return;
        view.current = openSpace(box.current, (element) => act.goTo(element, undefined));
        if (scene.space !== undefined) view.current.show(scene.space);
        view.current.light(lit);
      } catch (error) {
        const why = error instanceof Error ? error.message : String(error);
        say(`The view in space could not be opened here (${why}). The flat drawing shows the same.`);
      }
    })();
    return () => {
      gone = true;
      view.current?.close();
      view.current = undefined;
    };
  }, []);
  useEffect(() => {
    if (scene.space !== undefined) view.current?.show(scene.space);
  }, [scene.space]);
  useEffect(() => view.current?.light(lit), [lit]);

  return (
    <div class="space">
      <div class="space-canvas" ref={box} />
      <fieldset class="space-tools" aria-label="Way of looking">
        <button
          type="button"
          aria-pressed={flat}
          onClick={() => {
            view.current?.parallel(!flat);
            setFlat(!flat);
          }}
        >
          Without perspective
        </button>
        {(['corner', 'above', 'side', 'behind'] as const).map((from) => (
          <button key={from} type="button" onClick={() => view.current?.lookFrom(from)}>
            From {from === 'side' ? 'the side' : from === 'corner' ? 'a corner' : from}
          </button>
        ))}
      </fieldset>
    </div>
  );
}

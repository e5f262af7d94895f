/** @jsxRuntime automatic @jsxImportSource preact */
import type { Scene } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Acts } from './canvas-props.js';
import { filled } from './filled.js';
import type { SpaceView } from './space-view.js';
import { useWords } from './words-context.js';

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
  const words = useWords();

  useEffect(() => {
    let gone = false;
    void (async () => {
      try {
        const { openSpace } = await import('./space-view.js');
        if (gone || box.current === null) return;
        view.current = openSpace(box.current, words.threeD, (element) => act.goTo(element, undefined));
        if (scene.space !== undefined) view.current.show(scene.space);
        view.current.light(lit);
      } catch (error) {
        const why = error instanceof Error ? error.message : String(error);
        say(filled(words.threeDFailed, { reason: why }));
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
      <fieldset class="space-tools" aria-label={words.rotateTools}>
        <button
          type="button"
          aria-pressed={flat}
          onClick={() => {
            view.current?.parallel(!flat);
            setFlat(!flat);
          }}
        >
          {words.noPerspective}
        </button>
        {keysOf(viewpoints).map((from) => (
          <button key={from} type="button" onClick={() => view.current?.lookFrom(from)}>
            {words[viewpoints[from]]}
          </button>
        ))}
      </fieldset>
    </div>
  );
}

const viewpoints = {
  corner: 'fromCorner',
  above: 'fromAbove',
  side: 'fromSide',
  behind: 'fromBehind',
} as const;

const keysOf = <K extends string>(of: Readonly<Record<K, unknown>>) => Object.keys(of) as K[];

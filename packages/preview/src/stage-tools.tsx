/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { filled } from './filled.js';
import { useWords } from './words-context.js';

/** How long each stage stays up while they play, ms. */
const pace = 1600;

/** Steps through the building: a slider, single steps, and play. Past the last stage stands the finished work. */
export function StageTools(props: {
  readonly stages: readonly { readonly id: string; readonly title: string }[];
  readonly stage: number | undefined;
  readonly choose: (stage: number | undefined) => void;
}): JSX.Element | null {
  const { stages, stage, choose } = props;
  const words = useWords();
  const [playing, setPlaying] = useState(false);
  const last = stages.length;
  const at = stage ?? last;
  useEffect(() => {
    if (!playing) return;
    const timer = setTimeout(() => {
      if (at >= last) setPlaying(false);
      else choose(at + 1 >= last ? undefined : at + 1);
    }, pace);
    return () => clearTimeout(timer);
  });
  if (stages.length === 0) return null;
  const title = stage === undefined ? words.finished : (stages[stage]?.title ?? '');
  const go = (to: number) => {
    setPlaying(false);
    choose(to >= last ? undefined : Math.max(0, to));
  };
  const play = () => {
    if (!playing && at >= last) choose(0);
    setPlaying(!playing);
  };
  return (
    <fieldset class="stages" aria-label={words.stages}>
      <button type="button" onClick={() => go(at - 1)} disabled={at <= 0} aria-label={words.stageBefore}>
        ◂
      </button>
      <input
        type="range"
        min={0}
        max={last}
        value={at}
        aria-label={words.stage}
        aria-valuetext={
          stage === undefined
            ? title
            : filled(words.stageOf, { number: String(at + 1), total: String(last), title })
        }
        onInput={(e) => go(Number(e.currentTarget.value))}
      />
      <button type="button" onClick={() => go(at + 1)} disabled={at >= last} aria-label={words.stageNext}>
        ▸
      </button>
      <button type="button" onClick={play} aria-pressed={playing}>
        {playing ? words.stop : words.play}
      </button>
      <span class="title">{stage === undefined ? title : `${at + 1}/${last} ${title}`}</span>
    </fieldset>
  );
}

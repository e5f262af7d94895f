/** @jsxRuntime automatic @jsxImportSource preact */
import type { ViewChoice } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Canvas } from './canvas.js';
import { ExportTools } from './export-tools.js';
import type { Host } from './host.js';
import { type Drawn, joined } from './joined.js';
import { LossPicker } from './loss-picker.js';
import { More } from './more.js';
import { type Notice, Notices } from './notices.js';
import type { PanelWords } from './panel-words.js';
import { noPicture, pictureOf } from './picture.js';
import { PlanPicker } from './plan-picker.js';
import { SpaceToggle } from './space-toggle.js';
import { stageAfter } from './stage-after.js';
import { StageTools } from './stage-tools.js';
import { SubjectPicker } from './subject-picker.js';
import { Tally } from './tally.js';
import { ViewTabs } from './view-tabs.js';
import { WordsContext } from './words-context.js';
import { ZoomTools } from './zoom-tools.js';

/** The page of the panel. It shows scenes and says what the reader wants; the text is changed by the host alone. */
export function Panel(props: {
  readonly host: Host;
  /** The panel's own words until the first drawing brings them. */
  readonly words: PanelWords | undefined;
}): JSX.Element {
  const { host } = props;
  const [drawn, setDrawn] = useState<Drawn>();
  const latest = useRef<Drawn>();
  const [stale, setStale] = useState<string>();
  const [outdated, setOutdated] = useState<{ readonly uri: string; readonly text: string }>();
  const [said, setSaid] = useState<Notice>();
  const [lit, setLit] = useState<string>();
  const kept = useRef(host.kept());
  const [zoom, setZoom] = useState(kept.current?.zoom ?? 1);
  const [wanted, setWanted] = useState<'svg' | 'png' | 'pdf'>();
  const [inSpace, setInSpace] = useState(false);
  const pan = useRef(kept.current?.pan ?? { x: 0, y: 0 });
  const uri = useRef<string>();

  useEffect(() => {
    const stop = host.hear((message) => {
      if (message.kind === 'show') {
        const next = joined(latest.current, message);
        if (next === undefined) {
          host.post({ kind: 'ready' });
          return;
        }
        latest.current = next;
        uri.current = message.uri;
        setStale(message.stale);
        setSaid(undefined);
        setDrawn(next);
      } else if (message.kind === 'outdated') {
        setOutdated(message.text === undefined ? undefined : { uri: message.uri, text: message.text });
      } else if (message.uri === uri.current) {
        if (message.kind === 'light') setLit(message.element);
        else if (message.kind === 'say') setSaid({ text: message.text });
        else setWanted(message.format);
      }
    });
    host.post({ kind: 'ready' });
    return stop;
  }, [host]);

  const show = drawn?.show;
  const scene = drawn?.scenes[0];
  const words = show?.words ?? props.words;
  useEffect(() => {
    if (show === undefined) return;
    let frames = 2;
    let request = 0;
    const painted = () => {
      if (--frames > 0) request = requestAnimationFrame(painted);
      else
        host.post({
          kind: 'drawn',
          uri: show.uri,
          version: show.version,
          words: scene?.words ?? '',
          unchecked: show.tally.unchecked === true,
        });
    };
    request = requestAnimationFrame(painted);
    return () => cancelAnimationFrame(request);
  }, [host, show, scene]);

  useEffect(() => {
    if (wanted === undefined || scene === undefined || show === undefined) return;
    setWanted(undefined);
    pictureOf(scene, wanted, 'light').then(
      (data) => host.post({ kind: 'export', uri: show.uri, format: wanted, data }),
      (error: unknown) => setSaid({ text: noPicture(error, show.words) }),
    );
  }, [wanted]);

  const keep = () => {
    if (show === undefined || scene === undefined) return;
    const state = { uri: show.uri, plan: show.shown, choice: scene.choice, zoom, pan: pan.current };
    host.keep(state);
    host.post({ kind: 'keep', uri: show.uri, state });
  };
  useEffect(keep, [zoom, show, scene?.choice]);

  const choose = (change: Partial<ViewChoice>, plan = show?.shown ?? 0) => {
    if (show === undefined || scene === undefined) return;
    host.post({ kind: 'choose', uri: show.uri, plan, choice: { ...scene.choice, ...change } });
  };

  if (words === undefined) return <div class="panel" />;
  const notices = (
    <WordsContext.Provider value={words}>
      <Notices outdated={outdated?.text} stale={stale} said={said} dismiss={() => setSaid(undefined)} />
    </WordsContext.Provider>
  );
  // What was drawn of another file is not shown under the name of this one.
  const other = outdated !== undefined && show !== undefined && outdated.uri !== show.uri;
  if (show === undefined || scene === undefined || other) {
    return (
      <div class={outdated === undefined ? 'panel' : 'panel outdated'}>
        {notices}
        <p class="waiting">{(other ? undefined : stale) ?? words?.waiting}</p>
        <footer class="caution">{scene?.caution ?? words?.caution}</footer>
      </div>
    );
  }
  return (
    <WordsContext.Provider value={words}>
      <div class={outdated === undefined ? 'panel' : 'panel outdated'}>
        <header class="tools">
          <PlanPicker
            plans={show.plans}
            shown={show.shown}
            choose={(plan) => choose({ subject: undefined }, plan)}
          />
          <ViewTabs views={show.views} current={scene.choice.view} choose={(view) => choose({ view })} />
          <div class="row">
            <SubjectPicker show={show} choice={scene.choice} choose={(subject) => choose({ subject })} />
            <StageTools
              stages={show.stages}
              stage={scene.choice.stage}
              choose={(stage) => choose({ stage, lost: undefined })}
            />
            <LossPicker
              losses={show.losses ?? []}
              lost={scene.choice.lost}
              choose={(lost) => choose({ lost })}
            />
            <ZoomTools zoom={zoom} set={setZoom} />
            <SpaceToggle scene={scene} on={inSpace} set={setInSpace} />
            <More>
              {outdated === undefined ? (
                <ExportTools
                  scene={scene}
                  say={setSaid}
                  send={(format, data) => host.post({ kind: 'export', uri: show.uri, format, data })}
                />
              ) : null}
            </More>
          </div>
        </header>
        {notices}
        <Canvas
          scene={scene}
          lit={lit}
          zoom={zoom}
          setZoom={setZoom}
          pan={pan}
          inSpace={inSpace && scene.space !== undefined}
          moved={keep}
          say={(text) => setSaid(text === undefined ? undefined : { text })}
          act={{
            goTo: (element, property) => host.post({ kind: 'go to', uri: show.uri, element, property }),
            move: (drag, to) =>
              host.post({
                kind: 'move',
                uri: show.uri,
                version: show.version,
                element: drag.element,
                moves: drag.moves,
                to,
              }),
            courses: (element, by) =>
              host.post({ kind: 'courses', uri: show.uri, version: show.version, element, by }),
            stage: (by) =>
              choose({ stage: stageAfter(scene.choice.stage, by, show.stages.length), lost: undefined }),
          }}
        />
        <footer>
          {outdated === undefined ? <Tally tally={show.tally} plans={show.plans.length} /> : null}
          <details class="words">
            <summary>{words.inWords}</summary>
            <p>{scene.words}</p>
          </details>
          <p class="caution">{scene.caution}</p>
        </footer>
      </div>
    </WordsContext.Provider>
  );
}

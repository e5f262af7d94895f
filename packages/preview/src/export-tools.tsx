/** @jsxRuntime automatic @jsxImportSource preact */
import type { Scene } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Notice } from './notices.js';
import { copyPicture, NoClipboard, noPicture, pictureOf } from './picture.js';
import { themeNow } from './themes.js';

type Format = 'svg' | 'png' | 'pdf';

/** Takes the drawing away: as a file through the host, or as a picture on the clipboard. */
export function ExportTools(props: {
  readonly scene: Scene;
  readonly send: (format: Format, data: string) => void;
  readonly say: (said: Notice) => void;
}): JSX.Element {
  const [busy, setBusy] = useState(false);
  const tools = useRef<HTMLFieldSetElement>(null);
  /** Says how it went, and shuts the list that these tools stand in: it would lie over what is said. */
  const say = (said: Notice) => {
    props.say(said);
    const list = tools.current?.closest('details');
    list?.removeAttribute('open');
    list?.querySelector('summary')?.focus();
  };
  const run = async (task: () => Promise<void>) => {
    setBusy(true);
    try {
      await task();
    } catch (error) {
      const offer =
        error instanceof NoClipboard ? { words: 'Save as PNG', take: () => void save('png') } : undefined;
      say({ text: noPicture(error), offer });
    } finally {
      setBusy(false);
    }
  };
  // What is printed or sent is on white paper, whatever the theme of the screen.
  const save = (format: Format) =>
    run(async () => props.send(format, await pictureOf(props.scene, format, 'light')));
  const copy = () =>
    run(async () => {
      await copyPicture(props.scene, themeNow());
      say({ text: 'The drawing is on the clipboard as a picture.' });
    });
  return (
    <fieldset class="export" ref={tools} aria-label="Take it away">
      {(['svg', 'png', 'pdf'] as const).map((format) => (
        <button
          key={format}
          type="button"
          disabled={busy}
          onClick={() => void save(format)}
          aria-label={`Save as ${format.toUpperCase()}`}
        >
          {format.toUpperCase()}
        </button>
      ))}
      <button type="button" disabled={busy} onClick={() => void copy()} aria-label="Copy as a picture">
        Copy
      </button>
    </fieldset>
  );
}

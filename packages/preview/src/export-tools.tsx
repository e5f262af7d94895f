/** @jsxRuntime automatic @jsxImportSource preact */
import type { Scene } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { filled } from './filled.js';
import type { Notice } from './notices.js';
import { copyPicture, NoClipboard, noPicture, pictureOf } from './picture.js';
import { themeNow } from './themes.js';
import { useWords } from './words-context.js';

type Format = 'svg' | 'png' | 'pdf';

/** Takes the drawing away: as a file through the host, or as a picture on the clipboard. */
export function ExportTools(props: {
  readonly scene: Scene;
  readonly send: (format: Format, data: string) => void;
  readonly say: (said: Notice) => void;
}): JSX.Element {
  const words = useWords();
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
        error instanceof NoClipboard
          ? { words: filled(words.saveAs, { format: 'PNG' }), take: () => void save('png') }
          : undefined;
      say({ text: noPicture(error, words), offer });
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
      say({ text: words.copied });
    });
  return (
    <fieldset class="export" ref={tools} aria-label={words.exportTools}>
      {(['svg', 'png', 'pdf'] as const).map((format) => (
        <button
          key={format}
          type="button"
          disabled={busy}
          onClick={() => void save(format)}
          aria-label={filled(words.saveAs, { format: format.toUpperCase() })}
        >
          {format.toUpperCase()}
        </button>
      ))}
      <button type="button" disabled={busy} onClick={() => void copy()} aria-label={words.copyPicture}>
        {words.copy}
      </button>
    </fieldset>
  );
}

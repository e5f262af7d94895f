/** @jsxRuntime automatic @jsxImportSource preact */
import type { ComponentChildren, JSX } from 'preact';
import { useWords } from './words-context.js';

const keys = [
  ['keyTab', 'keyTabDoes'],
  ['keyPage', 'keyPageDoes'],
  ['keyEnter', 'keyEnterDoes'],
  ['keyAlt', 'keyAltDoes'],
  ['keyStage', 'keyStageDoes'],
  ['keyZoom', 'keyZoomDoes'],
  ['keyDrag', 'keyDragDoes'],
  ['keyEscape', 'keyEscapeDoes'],
] as const;

/** What is not needed all the time: taking the drawing away, and the keys. */
export function More({ children }: { readonly children: ComponentChildren }): JSX.Element {
  const words = useWords();
  return (
    <details class="more">
      <summary>{words.more}</summary>
      <div class="sheet-of-more">
        {children}
        <dl>
          {keys.map(([key, what]) => (
            <div key={key}>
              <dt>{words[key]}</dt>
              <dd>{words[what]}</dd>
            </div>
          ))}
        </dl>
      </div>
    </details>
  );
}

/** @jsxRuntime automatic @jsxImportSource preact */
import type { ComponentChildren, JSX } from 'preact';

const keys: readonly (readonly [string, string])[] = [
  ['Tab, arrows', 'go from shape to shape'],
  ['Page Down, Page Up', 'every shape in turn'],
  ['Enter', 'go to its line in the text'],
  ['Alt+↑  Alt+↓', 'one course more or less on a crib'],
  [',  .', 'stage before or next'],
  ['+  -  0', 'zoom in, out, fit'],
  ['Drag', 'a crib, a strut base or a vehicle: the text changes'],
  ['Escape', 'let go of a drag'],
];

/** What is not needed all the time: taking the drawing away, and the keys. */
export function More({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return (
    <details class="more">
      <summary>More</summary>
      <div class="sheet-of-more">
        {children}
        <dl>
          {keys.map(([key, what]) => (
            <div key={key}>
              <dt>{key}</dt>
              <dd>{what}</dd>
            </div>
          ))}
        </dl>
      </div>
    </details>
  );
}

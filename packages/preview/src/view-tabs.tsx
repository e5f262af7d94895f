/** @jsxRuntime automatic @jsxImportSource preact */
import type { ViewId } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useWords } from './words-context.js';

/** The views as tabs: arrow keys go from one to the next. */
export function ViewTabs(props: {
  readonly views: readonly { readonly id: ViewId; readonly name: string }[];
  readonly current: ViewId;
  readonly choose: (view: ViewId) => void;
}): JSX.Element {
  const words = useWords();
  const { views } = props;
  const step = (event: KeyboardEvent, from: number) => {
    const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    const to = event.key === 'Home' ? 0 : event.key === 'End' ? views.length - 1 : undefined;
    const index = to ?? (by === undefined ? undefined : (from + by + views.length) % views.length);
    const view = index === undefined ? undefined : views[index];
    if (view === undefined) return;
    event.preventDefault();
    props.choose(view.id);
    const tabs = (event.currentTarget as HTMLElement).parentElement?.children;
    const tab = index === undefined ? undefined : tabs?.[index];
    if (tab instanceof HTMLElement) tab.focus();
  };
  return (
    <div class="tabs" role="tablist" aria-label={words.views}>
      {views.map((view, i) => (
        <button
          key={view.id}
          type="button"
          role="tab"
          id={`tab-${view.id.replaceAll(' ', '-')}`}
          aria-selected={view.id === props.current}
          aria-controls="drawing"
          tabIndex={view.id === props.current ? 0 : -1}
          onClick={() => props.choose(view.id)}
          onKeyDown={(e) => step(e, i)}
        >
          {view.name}
        </button>
      ))}
    </div>
  );
}

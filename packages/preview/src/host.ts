import type { FromPanel, PanelState, ToPanel } from './messages.js';

/** The other side of the panel: the editor, or a page that stands in for it in tests. */
export interface Host {
  readonly post: (message: FromPanel) => void;
  readonly hear: (listener: (message: ToPanel) => void) => () => void;
  readonly kept: () => PanelState | undefined;
  readonly keep: (state: PanelState) => void;
}

interface EditorPage {
  postMessage(message: unknown): void;
  getState(): unknown;
  setState(state: unknown): void;
}

declare const acquireVsCodeApi: (() => EditorPage) | undefined;

/** The editor that shows this page. A page without one draws what it is sent and keeps nothing. */
export function editorHost(): Host {
  const page = typeof acquireVsCodeApi === 'function' ? acquireVsCodeApi() : undefined;
  return {
    post: (message) => page?.postMessage(message),
    hear: (listener) => {
      const on = (event: MessageEvent) => {
        if (isMessage(event.data)) listener(event.data);
      };
      window.addEventListener('message', on);
      return () => window.removeEventListener('message', on);
    },
    kept: () => {
      const state = page?.getState();
      return isState(state) ? state : undefined;
    },
    keep: (state) => page?.setState(state),
  };
}

const isMessage = (data: unknown): data is ToPanel =>
  typeof data === 'object' && data !== null && 'kind' in data && 'uri' in data;

const isState = (state: unknown): state is PanelState =>
  typeof state === 'object' && state !== null && 'choice' in state && 'zoom' in state && 'pan' in state;

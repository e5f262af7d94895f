import { firstChoice, type ViewChoice } from '@cribwright/drawing';
import type { Analysis } from '@cribwright/engine';
import type { Locale } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { FromPanel, PanelState, ToPanel } from '@cribwright/preview';
import type { Browser, Page } from 'playwright-core';
import { showMessage, type Whole } from '../../packages/extension/src/features/preview/show-message.js';
import { bundleFiles } from '../bundled.js';

/** Longer than this the panel is not waited for, ms. */
const patience = 120_000;

/** Under https, as a page that may use the clipboard must be. */
export const origin = 'https://panel.test';

/** The panel's page in a browser, with a host that answers as the editor does. Nothing leaves the machine. */
export interface FakeHost {
  readonly page: Page;
  readonly heard: readonly FromPanel[];
  readonly errors: readonly string[];
  readonly send: (message: ToPanel) => Promise<void>;
  /** Shows a plan, and waits until it has been painted. */
  readonly show: (change?: Partial<Show>) => Promise<void>;
  /** Waits for a message of a kind that has not been taken yet. */
  readonly next: <Kind extends FromPanel['kind']>(kind: Kind) => Promise<Extract<FromPanel, { kind: Kind }>>;
}

type Show = Extract<ToPanel, { kind: 'show' }>;
export type Theme = 'light' | 'dark' | 'high-contrast' | 'high-contrast-light';

let parts: Promise<ReadonlyMap<string, string>> | undefined;

/** The page's script, its chunks and its style sheet, as they are shipped. */
const bundle = (): Promise<ReadonlyMap<string, string>> => {
  parts ??= bundleFiles('panel').then(
    (files) => new Map(files.map((f) => [f.path.replace(/^.*\/panel\//, ''), f.text])),
  );
  return parts;
};

const skeleton = (theme: Theme): string => `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Drawing</title>
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src ${origin} data: blob:; style-src ${origin} 'nonce-n'; font-src ${origin}; script-src 'nonce-n' ${origin}">
<link rel="stylesheet" href="${origin}/panel.css">
<link rel="stylesheet" href="${origin}/theme.css">
</head><body class="${theme === 'high-contrast-light' ? 'vscode-high-contrast vscode-high-contrast-light' : `vscode-${theme}`}"><div id="panel"></div>
<script type="module" nonce="n" src="${origin}/panel.js"></script></body></html>`;

/** A few of the colors that an editor gives its pages, one set for each kind of theme. */
const colors: Readonly<Record<Theme, string>> = {
  light: '--vscode-editor-background:#fff;--vscode-foreground:#3b3b3b;--vscode-focusBorder:#005fb8',
  dark: '--vscode-editor-background:#1f1f1f;--vscode-foreground:#cccccc;--vscode-focusBorder:#4daafc;--vscode-dropdown-background:#313131;--vscode-dropdown-foreground:#ccc;--vscode-editorWidget-background:#202020;--vscode-panel-border:#2b2b2b;--vscode-toolbar-hoverBackground:#383838',
  'high-contrast':
    '--vscode-editor-background:#000;--vscode-foreground:#fff;--vscode-focusBorder:#f38518;--vscode-contrastBorder:#6fc3df;--vscode-dropdown-background:#000;--vscode-dropdown-foreground:#fff;--vscode-editorWidget-background:#000;--vscode-panel-border:#6fc3df;--vscode-toolbar-hoverBackground:#000',
  'high-contrast-light':
    '--vscode-editor-background:#fff;--vscode-foreground:#292929;--vscode-focusBorder:#006bbd;--vscode-contrastBorder:#0f4a85',
};

export async function openPanel(
  browser: Browser,
  plan: Plan,
  analysis: Analysis,
  options: {
    readonly theme?: Theme;
    readonly state?: PanelState;
    readonly width?: number;
    readonly height?: number;
    readonly locale?: Locale;
  } = {},
): Promise<FakeHost> {
  const files = await bundle();
  const theme = options.theme ?? 'light';
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1000, height: options.height ?? 900 },
  });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.route('**/*', (route) => {
    const name = new URL(route.request().url()).pathname.slice(1);
    const contentType = name.endsWith('.css') ? 'text/css' : name === '' ? 'text/html' : 'text/javascript';
    const body =
      name === '' ? skeleton(theme) : name === 'theme.css' ? `:root{${colors[theme]}}` : files.get(name);
    return body === undefined ? route.fulfill({ status: 404 }) : route.fulfill({ contentType, body });
  });

  const heard: FromPanel[] = [];
  const waiting: (() => void)[] = [];
  let taken = 0;
  let choice: ViewChoice = firstChoice;
  let last: Partial<Show> = {};
  const send = (message: ToPanel) => page.evaluate((m) => window.postMessage(m, '*'), message);
  const showNow = (change: Partial<Show> = {}) => {
    last = { ...last, ...change };
    return send({ ...messageFor(plan, analysis, choice, options.locale), ...last });
  };
  const hear = async (message: FromPanel) => {
    heard.push(message);
    for (const wake of waiting.splice(0)) wake();
    if (message.kind !== 'choose') return;
    choice = message.choice;
    await showNow();
  };
  await page.exposeFunction('tellHost', hear);
  // What a test runs in the page was compiled for Node, and keeps the names of its functions by this.
  await page.addInitScript({ content: 'globalThis.__name = (named) => named;' });
  await page.addInitScript({ content: standIn(options.state) });
  await page.goto(`${origin}/`);

  const next: FakeHost['next'] = async (kind) => {
    for (;;) {
      const index = heard.findIndex((m, i) => i >= taken && m.kind === kind);
      const found = heard[index];
      if (found !== undefined) {
        taken = index + 1;
        return found as Extract<FromPanel, { kind: typeof kind }>;
      }
      await new Promise<void>((wake, fail) => {
        waiting.push(wake);
        setTimeout(
          () => fail(new Error(`The panel never said “${kind}”. It said: ${errors.join('; ') || 'nothing'}`)),
          patience,
        );
      });
    }
  };
  const show = async (change?: Partial<Show>) => {
    await showNow(change);
    await next('drawn');
  };
  await next('ready');
  return { page, heard, errors, send, show, next };
}

/** What the editor gives its pages to speak with. */
const standIn = (state: PanelState | undefined): string => `{
  let kept = ${JSON.stringify(state) ?? 'undefined'};
  window.acquireVsCodeApi = () => ({
    postMessage: (message) => window.tellHost(message),
    getState: () => kept,
    setState: (state) => { kept = window.keptState = state; },
  });
}`;

export const testUri = 'file:///alder-ridge/yard.crib';

/** The message that the editor sends for a plan. */
export const messageFor = (plan: Plan, analysis: Analysis, choice: ViewChoice, locale?: Locale): Whole =>
  showMessage(
    {
      uri: testUri,
      version: 1,
      plans: [{ plan, analysis, places: {}, partial: false, unread: [] }],
      pending: analysis.unchecked === true,
      errors: false,
      stale: undefined,
    },
    { plan: 0, choice },
    undefined,
    locale,
  );

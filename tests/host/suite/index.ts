import './mocha-setup.js';
import './typing.js';
import './editor.js';
import './panel.js';
import './mouse.js';
import './make-safe.js';
import './truthful.js';
import { runMocha } from './run-mocha.js';

/** Entry point for the host: the same for the desktop, the browser-hosted editor and the web worker. */
export const run = (): Promise<void> => runMocha();

import './mocha-setup.js';
import './server-gone.js';

/** Entry point where the editor runs on Node: what is in `index.ts`, and what needs the processes of the machine. */
export { run } from './index.js';

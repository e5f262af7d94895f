import type { Turn } from './debounce.js';
import type { Files } from './files.js';

/** What a place to run in gives: Node has files and timers, a browser's worker has neither. */
export interface Platform {
  readonly files: Files;
  readonly turn: Turn;
}

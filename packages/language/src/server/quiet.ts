/** Runs something later, once messages that already wait have been handled. Node: `setImmediate`. */
export type Turn = (run: () => void) => void;

/** Turns that must pass without a stir. A message between two edits of a burst must not end the waiting. */
const quietTurns = 3;

/**
 * Waits for a burst of edits to end: calls `then` once no `stir` came for a few turns of the event loop.
 * It waits for the queue to empty, not for the clock, so a single edit is answered at once.
 */
export function quiet(turn: Turn, then: () => void) {
  let stirs = 0;
  let waiting = false;
  const wait = (seen: number, left: number): void =>
    turn(() => {
      if (stirs !== seen) wait(stirs, quietTurns);
      else if (left > 0) wait(seen, left - 1);
      else {
        waiting = false;
        then();
      }
    });
  return {
    stir(): void {
      stirs++;
      if (waiting) return;
      waiting = true;
      wait(stirs, quietTurns);
    },
    /** Rises with every stir: work that was begun under another number is out of date. */
    get count(): number {
      return stirs;
    },
  };
}

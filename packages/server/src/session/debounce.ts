/** Runs something later, once messages that already wait have been handled. Node: `setImmediate`. */
export type Turn = (run: () => void) => void;

/** Turns of the event loop that must pass without a trigger. A message between two edits of a burst must not end the waiting. */
const idleTurns = 3;

/**
 * Waits for a burst of edits to end: calls `then` once no `trigger` came for a few turns of the event loop.
 * It waits for the queue to empty, not for the clock, so a single edit is answered at once.
 */
export function debounce(turn: Turn, then: () => void) {
  let triggers = 0;
  let waiting = false;
  const wait = (seen: number, left: number): void =>
    turn(() => {
      if (triggers !== seen) wait(triggers, idleTurns);
      else if (left > 0) wait(seen, left - 1);
      else {
        waiting = false;
        then();
      }
    });
  return {
    trigger(): void {
      triggers++;
      if (waiting) return;
      waiting = true;
      wait(triggers, idleTurns);
    },
    /** Number of triggers so far. Work that began under another number is out of date. */
    get count(): number {
      return triggers;
    },
  };
}

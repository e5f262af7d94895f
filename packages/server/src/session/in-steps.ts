/** ms of work after which whoever waits comes first: less than a frame. */
const budget = 8;

/**
 * Runs steps to their end, and lets what waits come first as often as a budget of time is used up.
 *
 * @param pause resolves once what waits has been handled
 * @param overtaken asked after each pause: whether nobody wants the outcome any more
 * @returns whether it came to the end
 */
export async function inSteps(
  steps: Iterable<void>,
  pause: () => Promise<void>,
  overtaken: () => boolean,
): Promise<boolean> {
  let begun = performance.now();
  for (const _step of steps) {
    if (performance.now() - begun < budget) continue;
    await pause();
    if (overtaken()) return false;
    begun = performance.now();
  }
  return true;
}

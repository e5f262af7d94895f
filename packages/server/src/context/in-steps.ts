/** ms of work after which whoever waits comes first: less than a frame. */
const budget = 8;

/**
 * Runs steps to their end, and lets what waits come first as often as a budget of time is used up.
 *
 * @param pause resolves once what waits has been handled
 * @param overtaken asked after each pause: whether nobody wants the outcome any more
 * @returns what they come to; `undefined` where they were overtaken
 */
export async function inSteps<T>(
  steps: Iterator<void, T>,
  pause: () => Promise<void>,
  overtaken: () => boolean,
): Promise<{ readonly value: T } | undefined> {
  let begun = performance.now();
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done === true) return { value: step.value };
    if (performance.now() - begun < budget) continue;
    await pause();
    if (overtaken()) {
      steps.return?.();
      return undefined;
    }
    begun = performance.now();
  }
}

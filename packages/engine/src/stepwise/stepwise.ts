/** A part that is worked out at most once: in one go, by calling it, or in steps before anybody asks. */
export interface Stepwise<T> {
  (): T;
  /** Does the work if it is still to do, and stops after each step. What it throws, the call throws again. */
  steps(): Generator<void, void>;
}

export function stepwise<T>(make: () => Generator<void, T>): Stepwise<T> {
  let made: { readonly value: T } | undefined;
  const whole = () => {
    made ??= { value: inOneGo(make()) };
    return made.value;
  };
  return Object.assign(whole, {
    *steps(): Generator<void, void> {
      if (made === undefined) made = { value: yield* make() };
    },
  });
}

/** Runs steps to their end. */
export function inOneGo<T>(steps: Generator<void, T>): T {
  for (let step = steps.next(); ; step = steps.next()) if (step.done === true) return step.value;
}

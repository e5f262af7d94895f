import type { Writable } from 'node:stream';

/** Writes to a stream that may break at any time, and remembers whether it did. */
export interface Output {
  write(text: string): void;
  /** What went wrong, unless the reader alone stopped early, as `head` does. Known once `ended` has resolved. */
  readonly fault: Error | undefined;
  /** Once all that was written has been taken, or the stream has broken. */
  ended(): Promise<void>;
}

export function standardOutput(stream: Writable): Output {
  let fault: Error | undefined;
  let broken = false;
  const failed = (error: NodeJS.ErrnoException): void => {
    broken = true;
    if (error.code !== 'EPIPE') fault ??= error;
  };
  let open = 0;
  let done: () => void = () => undefined;
  stream.on('error', (error: NodeJS.ErrnoException) => {
    failed(error);
    done();
  });
  return {
    write(text) {
      if (broken) return;
      open++;
      try {
        stream.write(text, (error) => {
          open--;
          if (error) failed(error);
          if (open === 0) done();
        });
      } catch (error) {
        open--;
        failed(error instanceof Error ? error : new Error(String(error)));
      }
    },
    get fault() {
      return fault;
    },
    ended: () =>
      open === 0 || broken
        ? Promise.resolve()
        : new Promise((resolve) => {
            done = resolve;
          }),
  };
}

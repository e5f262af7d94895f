/** All that a command may touch of the world. Tests hand in their own. */
export interface Io {
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly isTTY: boolean;
  /** Today as `2031-05-04`: an acceptance runs out against it. */
  readonly today: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly stdin: () => Promise<string>;
}

/** The panel has painted a file as of some version of its text. */
export interface Drawn {
  readonly uri: string;
  readonly version: number;
  /** What the drawing says to a reader who does not see it. */
  readonly words: string;
  /** It was drawn before its checks had run; it is drawn again when they have. */
  readonly unchecked: boolean;
}

/** A form that the language no longer reads, and the one that took its place. */
export interface RenamedWords {
  readonly old: string;
  readonly now: string;
  /** `line`: how a line or block starts. `words`: inside a line. `name`: a name from the bundled library. */
  readonly at: 'line' | 'words' | 'name';
}

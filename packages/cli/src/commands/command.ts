import type { Words } from '@cribwright/messages';
import type { Command } from 'commander';
import type { Io } from '../terminal/io.js';

/** One word of the command line. Adding one is one file here and one line in `program.ts`. */
export interface CommandPart {
  /**
   * Adds the command to the program. What it ends with is told to `ends`.
   *
   * @param words the language of its help
   */
  readonly add: (program: Command, io: Io, ends: (code: number) => void, words: Words) => void;
}

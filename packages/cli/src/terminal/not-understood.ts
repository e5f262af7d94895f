import { type Message, wordsIn } from '@cribwright/messages';

/** What was asked for is not there. `said` tells so, and what could be asked for, one sentence after the other. */
export class NotUnderstood extends Error {
  readonly said: readonly Message[];
  constructor(...said: readonly Message[]) {
    super(said.map(wordsIn('en', 'us').message).join(' '));
    this.said = said;
  }
}

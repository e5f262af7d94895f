import { type Message, term } from '@cribwright/messages';

/** What the models assume, for every sheet. */
export const assumptions: readonly Message[] = [
  term('analysis.rigid-bodies'),
  term('analysis.tight-contacts'),
  term('analysis.slow-loads'),
  term('analysis.crib-height'),
  term('analysis.sound-timber'),
];

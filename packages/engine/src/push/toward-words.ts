import { type Message, term } from '@cribwright/messages';

/** `toward the rear`, `toward the front and the driver side`. */
export function towardWords(angle: number): Message {
  const x = Math.cos(angle);
  const y = Math.sin(angle);
  const along = x > 0 ? 'rear' : 'front';
  const across = y > 0 ? 'passenger' : 'driver';
  if (Math.abs(y) < 1e-9 || Math.abs(y) < 0.2 * Math.abs(x)) return term(`push.toward-${along}`);
  if (Math.abs(x) < 0.2 * Math.abs(y)) return term(`push.toward-${across}`);
  return term(`push.toward-${along}-and-${across}`);
}

import { type Message, message, name, term } from '@cribwright/messages';

/** What the underside of a captured part is called: `underside of frame-rail`. */
export const undersideOf = (part: string | undefined): Message =>
  part === undefined
    ? term('figure.underside-of-the-captured-part')
    : message('figure.underside-of', { part: name(part) });

import type { TextChange } from '@cribwright/language';

/** Two changes that overlap, or put something in at one place. Deleting neighboring lines is no clash. */
export const clash = ({ span: a }: TextChange, { span: b }: TextChange): boolean =>
  (a.start < b.end && b.start < a.end) || a.start === b.start;

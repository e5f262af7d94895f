import { messages } from '@cribwright/engine';

/** Why a change of the plan cannot be made in its text. */
export const editWords = {
  'not here': '{element} does not stand in this plan’s own text. Change it where it is written.',
  'no body': '{element} has no lines of its own to change.',
  'from pattern': '{element} comes from a pattern. Change the pattern, or write the support out in the plan.',
  'worked out': '{value} is worked out from something else, so it cannot be dragged. Change it in the text.',
  'by part': 'Its place is said by a part ({place}). Write a distance instead, and it can be dragged.',
  range: '{value} is a range, so it cannot be dragged. Change it in the text.',
  'no place': '{element} has no line that says where it is. Write one, and it can be dragged.',
  unreadable: 'The line that says where {element} is cannot be read. Put it right first.',
  'cannot move': '{element} cannot be dragged that way.',
} as const;

export const refuse = messages('edit', editWords);

import { messages } from '@cribwright/engine';

/** What the editor itself says, beside findings and problems. */
export const editorWords = {
  source: 'Source: {source}',
  governs: 'Governs: {governs}',
  about: '{text} is {other}',
  declaredIn: 'in {where}',
  fixAll: 'Put right all that has one safe answer',
  couldNotRun: 'This check could not run, so nothing here says that it is safe.',
  broke: 'The checks of this file stopped: {why}. Do not rely on what is shown; please report it.',
  more: 'There is more: {count} further messages are not shown. Put these right first.',
  aboutWriting:
    'This is about how a plan is written. The line it stands on could not be read whole; the rest of the plan is still checked, and says so where it hangs on this line.',
  whatItSays: 'What it says',
  whatItOffers: 'What it offers to put right',
  libraryName:
    '{name} comes with the tool and keeps its name. Copy it into a file of your own to call it something else.',
  noName: 'There is no name here that could be changed.',
  notAName:
    '"{name}" cannot be a name. A name is one word: letters, digits and _, not starting with a digit.',
  nameTaken: '{name} is already the name of something here. Choose another.',
  nameChanges: 'With the name {name} the plan would read differently: {what}. Choose another.',
  movedOn: 'The text has changed since the drawing was made. Try again.',
  noFile: 'The file is not there any more.',
  noPlan: 'There is no plan in this file.',
  safe: 'nothing unsafe found',
  notWhole: 'NOT READ WHOLE',
  dangers: '{count} unsafe',
  warnings: '{count} to look at',
  notRun: '{count} not checked',
  otherBuild:
    'Build {crib} {layout} of {timber}, {courses} courses: {timbers} timbers, {use} of its capacity used',
  ruleOn: '{rule} on {on}',
  fixRaises: '{fix}. Then unsafe: {what}',
  fixRemains: '{fix}. Not enough by itself',
  pending: 'still working out the push and the worst loads',
  loadsPending: 'still working out the loads',
  seeDrawing: 'See the drawing',
  heldExpectations: '{held} of {all} expectations held',
} as const;

export const say = messages('editor', editorWords);

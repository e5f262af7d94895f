import { messages } from '@cribwright/engine';
import type { Hole } from '@cribwright/messages';

/**
 * Everything that the language itself says, in English. A key is a code, and after a dot which of its sentences.
 * Holes are filled at the call; a missing or misspelled one does not compile.
 */
export const words = {
  'brace-not-closed':
    'The block opened here is never closed. Put a closing brace on a line of its own where it ends.',
  'brace-not-closed.fix': 'Close it here',
  'brace-stray': 'This brace closes nothing. Take it out, or open the block it belongs to.',
  'brace-stray.fix': 'Take out the brace',
  'brace-not-opened':
    'A brace { is missing at the end of this line. What stands further in below it is taken to belong to it.',
  'brace-not-opened.fix': 'Open the block here',
  'braces-too-deep': 'Blocks stand more than {most} deep here. What is further in is not read.',
  'file-too-long':
    'The file is too long. Nothing after this place is read: split it, and join the pieces with use.',
  'too-many-plans':
    'The file holds more than {most} plans. From here on they are NOT checked: move them to files of their own.',
  'plan-too-large.vehicles':
    'This plan has {count} vehicles. At most {most} can be checked together, so it is NOT checked. Split it into plans of the vehicles that touch.',
  'plan-too-large.supports':
    'This plan has {count} supports, patterns included. At most {most} can be checked together, so it is NOT checked. Split it into several plans.',
  'plan-too-large.steps':
    'This plan has {count} steps. At most {most} can be checked together, so it is NOT checked. Put several supports into one step, or split the plan.',
  'plan-too-large.loads':
    'This plan has {count} loads. At most {most} can be checked together, so it is NOT checked. Split it into several plans.',
  'plan-too-large.parts':
    'Vehicle {vehicle} has {count} axles and parts. At most {most} can be checked, so this plan is NOT checked. Leave out parts that nothing touches.',
  'part-too-many':
    'Part {part} comes to {count} crossmembers. At most {most} can be checked and drawn: look at where it runs and at its spacing.',
  'text-not-closed': 'This text has no closing quote on its line. Text in quotes stays on one line.',
  'text-not-closed.fix': 'Close the quote',
  'comment-not-closed': 'This comment has no */ that ends it: the rest of the file is not read.',
  'strange-character.quote': 'Text goes between straight quotes, like "this".',
  'strange-character.fix': 'Change to a straight quote',
  'strange-character.hidden': 'This text holds a sign that cannot be seen: {character}. Take it out.',
  'strange-character.hiddenFix': 'Take out what cannot be seen',
  'strange-character':
    '{character} means nothing here. Plans are written with letters, numbers, braces and , : = + - * / % ( ).',

  'unknown-line': '{what} cannot start a line {where}.',
  'unknown-line.near': '{what} cannot start a line {where}. Did you mean {near}?',
  'unknown-line.choices': '{what} cannot start a line {where}. Here one may write {choices}.',
  'unknown-line.height':
    'A crib has no line for its height: it follows from its courses. Write courses, and the height is worked out.',
  'unknown-line.fix': 'Change to {near}',
  'wrong-place': '{what} does not belong {where}. It belongs {rightPlace}.',
  'line-twice': '{what} is said twice {where}. Only the first one counts.',
  'line-twice.first': 'the first one',
  'line-twice.fix': 'Take this line out',
  'line-missing': '{subject} needs a line that says {key}, such as: {example}',
  'line-missing.fix': 'Add {key}',
  'line-missing.several': '{subject} still needs these lines: {keys}.',
  'line-missing.allFix': 'Add them, to be filled in',
  'line-too-long': 'This line is NOT read: it has more than {most} words. Split it in several.',
  'line-empty': '{key} needs more: {example}',
  'body-missing': '{subject} needs its lines, between braces.',
  'body-unexpected': '{what} is one line and takes no braces.',
  'name-missing': '{kind} needs a name: {example}',
  'name-malformed': '{text} cannot be a name. A name starts with a letter and holds letters, digits and _.',
  'name-malformed.fix': 'Write {near}',
  'name-is-unit': '{text} is a unit, so it cannot be a name as well.',
  'title-missing': '{kind} needs a title in quotes: {example}',
  'title-missing.fix': 'Put it in quotes',
  'type-missing': '{subject} needs its {kind} after a colon: {example}',
  'type-missing.fix': 'Put a colon before {near}',
  'type-unexpected': '{kind} takes no type after a colon.',
  'head-unexpected': '{text} is not understood here. The line starts as: {example}',

  'word-unexpected': '{text} is not understood here.',
  'word-unexpected.choices':
    '{text} is not understood here. What may stand here: {choices}. The line reads: {example}',
  'word-unexpected.sign': 'No {text} stands between a word and its value. The line reads: {example}',
  'word-unexpected.and': 'Between the things of a list stands a comma, not {text}. The line reads: {example}',
  'word-unexpected.comma': 'Put a comma',
  'word-unexpected.near': '{text} is not understood here. Did you mean {near}?',
  'word-unexpected.end': '{text} is one word too many: the line was complete before it. It reads: {example}',
  'word-unexpected.fix': 'Change to {near}',
  'word-unexpected.drop': 'Take out {text}',
  'line-unfinished': 'The line stops too early. What comes next: {choices}. It reads: {example}',

  'unknown-name': 'There is no {kind} named {text}.',
  'unknown-name.near': 'There is no {kind} named {text}. Did you mean {near}?',
  'unknown-name.choices': 'There is no {kind} named {text}. There are: {choices}.',
  'unknown-name.use': 'There is no {kind} named {text} here. {file} has one: use it.',
  'unknown-name.fix': 'Change to {near}',
  'unknown-name.useFix': 'Add use "{file}"',
  'wrong-kind': '{text} is {is}. What is due here is {kind}.',
  'wrong-kind.near': '{text} is {is}. What is due here is {kind}, such as {near}.',
  'wrong-kind.foot': '{text} is a strut, and a strap or chain is anchored to its base: write {near}.',
  'wrong-kind.declared': '{text} is named here',
  'unknown-part': '{vehicle} has no part named {text}.',
  'unknown-part.near': '{vehicle} has no part named {text}. Did you mean {near}?',
  'unknown-part.choices': '{vehicle} has no part named {text}. Its parts: {choices}.',
  'unknown-part.none': '{text} cannot be found: {vehicle} has no parts described.',
  'unknown-axle': '{vehicle} has no axle {text}.',
  'unknown-axle.choices': '{vehicle} has no axle {text}. Its axles: {choices}.',
  'unknown-rule': 'There is no check named {text}.',
  'unknown-rule.near': 'There is no check named {text}. Did you mean {near}?',
  'name-twice': 'The name {text} is taken already. Two things in one plan cannot share a name.',
  'name-twice.first': 'the first {text}',
  'name-twice.fix': 'Rename to {near}',
  'type-cycle': '{text} extends itself in the end: {path}.',
  'value-cycle': '{text} is worked out from itself: {path}.',
  'unused-name': '{text} is never used.',
  'unused-name.fix': 'Take out {text}',
  'unused-use': 'Nothing from {file} is used here.',
  'unused-use.fix': 'Take out this line',

  'number-malformed': '{why}.',
  'number-malformed.fix': 'Write {near}',
  'unit-missing': '{text} what? {due} needs its unit, such as {example}.',
  'unit-missing.fix': 'Write {near}',
  'percent-missing': '{text} alone would mean {percent}. Write {example}.',
  'unit-unknown': '{text} is no unit. {due} is written such as {example}.',
  'unit-unknown.near': '{text} is no unit. Did you mean {near}?',
  'unit-unknown.fix': 'Change to {near}',
  'unit-order': '{why}.',
  'feet-mark': 'Write {near}: the marks for feet and inches are not read.',
  'feet-mark.fix': 'Write {near}',
  'wrong-dimension': 'What is due here is {due}, such as {example}. {text} is {is}.',
  'wrong-dimension.fix': 'Change the unit to {near}',
  'dimension-clash': '{left} is {leftIs} and {right} is {rightIs}: they cannot be {done}.',
  'dimension-clash.near':
    '{left} is {leftIs} and {right} is {rightIs}: they cannot be {done}. Perhaps {near} was meant.',
  'dimension-clash.fix': 'Change to {near}',
  'range-unexpected': 'One value is due here, not a range.',
  'range-unexpected.example': 'One value is due here, not a range: write {example}.',
  'range-unexpected.fix': 'Keep {near}',
  'range-order': 'The range runs from {low} down to {high}. Write the smaller one first.',
  'range-order.fix': 'Swap the two ends',
  'not-whole': '{text} is due as a whole number.',
  'too-small': '{text} is too small: at least {least} is due here.',
  'too-large': '{text} is too large: at most {most} is due here.',
  'below-zero': '{due} cannot be below zero.',
  'calculation-too-long':
    'This calculation has more than {most} pieces. Split it: give pieces of it a name with let.',
  'divided-by-zero': 'This divides by zero.',
  'date-malformed': '{text} is no date. Write year, month, day, such as 2027-03-01.',

  'use-misplaced': 'A use line stands at the top of the file, not in a block.',
  'use-malformed': 'After use comes a file in quotes: use "caches/rescue-12.crib"',
  'use-not-found': 'There is no file {path}.',
  'use-not-found.near': 'There is no file {path}. Did you mean {near}?',
  'use-not-found.fix': 'Change to {near}',
  'use-outside': '{path} lies outside this folder. Files may be used from inside it, or from the library.',
  'use-unreadable.outside':
    '{path} is a link that leads outside this folder, so it is not read. Copy the file into the folder.',
  'use-unreadable.noFile': '{path} is not a file, so it is not read.',
  'use-unreadable.noText':
    '{path} is not text in UTF-8, so it is not read. Save it as UTF-8 text, or name the right file.',
  'use-unreadable.large': '{path} is larger than 4 MB, so it is not a plan file and is not read.',
  'use-unreadable.loop': '{path} is a link that leads back to itself, so nothing can be read.',
  'use-unreadable.permission': '{path} cannot be read: you have no permission to open it.',
  'use-unreadable.failed': '{path} is there, but it cannot be read.',
  'use-unreadable.half':
    'This path holds half of a character, and no file has such a name. Type the name of the file again.',
  'use-not-crib': '{path} is no plan file. Files used here end in .crib.',
  'use-cycle': 'These files use each other in a ring: {path}.',
  'use-itself': 'The file uses itself.',
  'use-too-many':
    'Files use each other more than {most} deep, or more than {files} files are used. What lies beyond is not read.',
  'use-twice': '{path} is used twice.',
  'use-not-whole':
    'The plans here are NOT READ WHOLE. What they read through {path} has errors: {count}, the first in {file}, line {line}. Put them right there. Until then nothing here counts as safe.',

  'argument-missing': '{pattern} needs {names} as well.',
  'argument-missing.fix': 'Add {names}',
  'argument-unknown': '{pattern} has no {text}. It takes {names}.',
  'argument-twice': '{text} is given twice.',
  'argument-wrong': '{text} is due as {due}.',
  'arguments-missing': 'After {pattern} comes what it needs, in parentheses: {example}',
  'parameter-type': '{text} is no kind of thing a pattern can take. It may be {choices}.',

  'vehicle-missing': 'The plan has no vehicle. It needs at least one: {example}',
  'step-twice': 'There are two steps {number}. Each step has its own number.',
  'step-number-missing': 'A step starts with its number: {example}',
  'step-number-missing.fix': 'Write {near}',
  'step-unknown': 'There is no step {number}.',
  'tie-end-missing': '{what} is anchored at one end only. Say the other end too: {example}',
  'contact-none':
    '{part} of {upper} does not pass over {lower} as they stand here. Look at where {lower} is, or say where they touch: {example}',
  'ground-missing':
    'The plan does not say what ground it stands on. It is taken as unknown: no grip to speak of, and nobody knows what it bears.',
  'ground-missing.fix': 'Add the ground, to be filled in',
  'plan-unchecked': '{plan} cannot be checked as it stands. NOTHING in it was checked.',
  'vehicle-size': '{vehicle} has no {what}, so it cannot be checked. Say it, such as: {example}',
  'vehicle-weight':
    '{vehicle} has no axles and no weight, so it cannot be checked. Use a type that has axles, or say its weight and center.',
  'value-unknown': '{text} cannot be worked out here: {why}.',
  'not-in-plan': '{what} could not be read, so the checks leave it out. The plan is NOT checked whole.',
  'plan-not-whole':
    'This plan is NOT READ WHOLE: something in it could not be read, and is not checked. Nothing here counts as safe.',
  'chock-ways':
    'This step does not say which way the wheels are kept from rolling, so no chock is counted. Say it: both directions, forward or rearward.',
  'chock-ways.fix': 'Chock it in both directions',
  'load-height':
    'Load {load} pushes sideways, and nothing says how high, so the checks leave it out. The plan is NOT checked whole. Say it, such as: {example}',
  'exercise-plan': 'This lesson has {count} plans: say which one this exercise is about.',
  'exercise-figure': '{on} has no {figure}, so there is no key to this exercise.',
  'exercise-fault': 'No check finds a fault here, so there is nothing to find.',
  'exercise-finish': 'The plan must have a fault on {on} for this exercise, or a line to leave out.',
  finding: '{text}',
} as const;

const fill = messages('language', words);

/** As much of the plan as a message repeats. All of our own words are shorter. */
const longestHole = 400;

/** A message in the words of the table. What it repeats of the plan is cut where it would fill the screen. */
export const say: typeof fill = (key, holes) => fill(key, shortened(holes));

const shortened = <All extends Readonly<Record<string, Hole>>>(holes: All): All =>
  Object.values(holes).some(tooLong)
    ? (Object.fromEntries(
        Object.entries(holes).map(([name, text]) => [name, tooLong(text) ? `${text.slice(0, 60)}…` : text]),
      ) as All)
    : holes;

const tooLong = (hole: Hole): hole is string => typeof hole === 'string' && hole.length > longestHole;

/** The code that a key belongs to: `unknown-name.near` is a sentence of `unknown-name`. */
export const codeOf = (key: string): string => key.split('.')[0] ?? key;

/** Every code that a problem of the text may have. `finding` only carries the engine's words. */
export const languageCodes: readonly string[] = [...new Set(Object.keys(words).map(codeOf))].filter(
  (c) => c !== 'finding',
);

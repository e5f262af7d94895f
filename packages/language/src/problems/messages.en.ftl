### What the language says about the text of a plan.
### prefix: language

# $block (name)
brace-not-closed = { $block } has no closing brace. Its lines end here, so the brace goes after them.
brace-not-closed--fix = Add the closing brace here
# $block (name)
# $text (name)
brace-not-closed--word = { $block } has no closing brace. Write the brace {"}"} here in place of { $text }.
# $text (name)
brace-bracket = Lines of a block go between the braces {"{"} and {"}"}, not { $text }.
brace-bracket--fix = Change to braces
brace-twice = This block is opened twice. Remove one of the two opening braces.
brace-stray = This brace closes nothing. Remove it, or open the block that it belongs to.
brace-stray--fix = Remove the brace
# $block (name)
brace-not-opened = The opening brace is missing after { $block }. The lines indented below are read as part of it.
brace-not-opened--fix = Add the opening brace here
# $most (count)
braces-too-deep = Blocks are nested more than { $most } deep here. Anything deeper is not read.
file-not-utf8 = A character here cannot be read, because the file is not saved as UTF-8. Save it with the encoding UTF-8, and type the character again.
file-not-utf8--utf16 = This file is saved as UTF-16, so NOTHING in it is read. Save it with the encoding UTF-8.
file-empty = This file is empty. A plan starts with the word plan and its title in quotes.
file-empty--comments = This file has only comments, and no plan. A plan starts with the word plan and its title in quotes.
file-empty--fix = Start a plan here
file-too-long = The file is too long. Nothing after this point is read. Split the file and join the parts with use.
# $most (count)
too-many-plans = The file has more than { $most } plans. The plans from here on are NOT checked. Move them to other files.
# $count (count)
# $most (count)
plan-too-large--vehicles = This plan has { $count } vehicles. The limit is { $most }, so the plan is NOT checked. Split it into plans of vehicles that touch.
# $count (count)
# $most (count)
plan-too-large--supports = This plan has { $count } supports, patterns included. The limit is { $most }, so the plan is NOT checked. Split it into several plans.
# $count (count)
# $most (count)
plan-too-large--steps = This plan has { $count } steps. The limit is { $most }, so the plan is NOT checked. Put several supports into one step, or split the plan.
# $count (count)
# $most (count)
plan-too-large--loads = This plan has { $count } loads. The limit is { $most }, so the plan is NOT checked. Split it into several plans.
# $count (count)
# $vehicle (text)
# $most (count)
plan-too-large--parts = Too many axles and parts: { $count } in { $vehicle }. The limit is { $most }, so the plan is NOT checked. Remove parts that nothing touches.
# $part (name)
# $count (count)
# $most (count)
part-too-many = Part { $part } has { $count } joists. The limit is { $most }. Check where the part runs and its spacing.
text-not-closed = The closing quote is missing on this line. Text in quotes stays on one line.
text-not-closed--fix = Add the closing quote
text-not-opened = The opening quote is missing before this text. Text goes between two straight quotes.
text-not-opened--fix = Add the opening quote
text-quote-inside = A quote inside a text ends it. Write the text without quotes inside.
comment-not-closed = This comment has no */ at its end. The rest of the file is not read.
comment-not-closed--fix = Change to a comment of one line
strange-character--quote = Text goes between straight quotes, like "this".
strange-character--fix = Change to a straight quote
# $character (name)
strange-character--hidden = This text has a hidden character: { $character }. Remove it.
strange-character--hidden-fix = Remove the hidden characters
# $text (name)
# $near (name)
strange-character--wide = { $text } is written in full-width characters. Write { $near }.
strange-character--wide-fix = Change to plain characters
# $character (name)
strange-character--remark = { $character } does not start a comment. A comment starts with //.
strange-character--remark-fix = Make it a comment
# $character (name)
strange-character--ruler = A line of { $character } has no meaning here. Remove it, or put // before it.
# $character (name)
strange-character--bullet = { $character } is a bullet of a list. Lines of a plan have no bullets.
strange-character--sentence = A sentence cannot be a line of a plan. A remark starts with //.
# $character (name)
# $example (name)
strange-character--about = { $character } has no meaning here. For a value that is not known exactly, write a range: { $example }.
strange-character--period = No period goes here.
# $character (name)
# $near (name)
strange-character--dash = { $character } between two numbers has no meaning here. For a range, write { $near }.
# $near (name)
strange-character--pound = Write the unit as a word: { $near }.
# $near (name)
strange-character--and = A length in two units has nothing between them. Write { $near }.
# $character (name)
strange-character--comma = Separate the items of a list with a comma, not { $character }.
# $near (name)
strange-character--by = Write by between the two numbers: { $near }.
# $character (name)
strange-character = { $character } has no meaning here. Plans use letters, numbers, braces and , : = + - * / % ( ).

# $what (name)
# $where (message)
unknown-line = { $what } cannot start a line { $where }.
# $what (name)
# $where (message)
# $near (name)
unknown-line--near = { $what } cannot start a line { $where }. Did you mean { $near }?
# $what (name)
# $where (message)
# $choices (name)
unknown-line--choices = { $what } cannot start a line { $where }. Lines here start with { $choices }.
unknown-line--height = A crib has no height line. Its height is calculated from its courses. Write courses instead.
# $near (name)
unknown-line--fix = Change to { $near }
# $what (name)
# $where (message)
# $rightPlace (list)
wrong-place = { $what } does not belong { $where }. It belongs { $rightPlace }.
# $what (name)
# $where (message)
line-twice = { $what } is given twice { $where }. Only the first line counts.
line-twice--first = first line
line-twice--fix = Remove this line
line-continued = This seems to be the rest of the previous line. Put it on that line, or end that line with a comma.
line-continued--fix = Join the two lines
# $keyword (name)
# $near (name)
name-next-line = The name goes on the same line as { $keyword }: write { $near }.
# $keyword (name)
# $example (name)
line-joined = { $keyword } starts a new line. Put a line break or a semicolon before it, such as: { $example }
line-joined--fix = Put a semicolon before it
line-joined--comma = Lines in one block are separated by a semicolon or a line break, not a comma.
line-joined--comma-fix = Change the comma to a semicolon
# $text (name)
# $near (name)
comma-missing = A comma is missing before { $text }. Write { $near }.
comma-missing--fix = Add the comma
# $text (name)
# $near (name)
text-unquoted = { $text } goes in quotes: { $near }
text-unquoted--fix = Put it in quotes
# $what (name)
# $where (message)
block-twice = { $what } is given twice { $where }. Put all its lines in one block.
# $what (name)
block-twice--first = first { $what }
# $what (name)
block-twice--fix = Remove the second { $what }
# $subject (text)
# $key (name)
# $example (name)
line-missing = { $subject } needs the line { $key }, such as: { $example }
# $key (name)
line-missing--fix = Add { $key }
# $subject (text)
# $keys (list)
line-missing--several = { $subject } still needs these lines: { $keys }.
line-missing--all-fix = Add the missing lines to fill in
# $most (count)
line-too-long = This line is NOT read: it has more than { $most } words. Split it into several lines.
# $key (name)
# $example (name)
line-empty = { $key } needs a value: { $example }
# $subject (text)
body-missing = { $subject } needs its lines, between braces.
# $what (name)
body-unexpected = { $what } is a single line and takes no braces.
# $keyword (name)
# $example (name)
name-missing = Name missing after { $keyword }. Write: { $example }
# $text (name)
name-malformed = { $text } cannot be a name. A name starts with a letter and has only letters, digits and _.
# $near (name)
name-malformed--fix = Write { $near }
# $text (name)
name-is-unit = { $text } is a unit, so it cannot be a name.
# $keyword (name)
# $example (name)
title-missing = Title missing after { $keyword }. Write it in quotes: { $example }
title-missing--fix = Put it in quotes
# $subject (text)
# $kind (list)
# $example (name)
type-missing = { $subject } needs a type ({ $kind }) after a colon: { $example }
# $near (name)
type-missing--fix = Put a colon before { $near }
# $keyword (name)
type-unexpected = { $keyword } takes no type after a colon.
# $text (name)
# $near (name)
name-spaces = A name is one word, not { $text }. Write { $near }.
# $text (name)
# $near (name)
type-spaces = The name of a type is one word, not { $text }. Write { $near }.
# $near (name)
type-missing--colon = The type goes after a colon. Write { $near }.
# $text (name)
# $example (name)
head-unexpected = { $text } cannot be read here. The line starts as: { $example }

# $text (name)
word-unexpected = { $text } cannot be read here.
# $text (name)
# $choices (list)
# $example (name)
word-unexpected--choices = { $text } cannot be read here. Expected: { $choices }. Example: { $example }
# $text (name)
# $example (name)
word-unexpected--sign = No { $text } goes between a word and its value. Example: { $example }
# $text (name)
# $example (name)
word-unexpected--and = Separate the items of a list with a comma, not { $text }. Example: { $example }
word-unexpected--comma = Change to a comma
# $text (name)
# $near (name)
word-unexpected--near = { $text } cannot be read here. Did you mean { $near }?
# $text (name)
# $example (name)
word-unexpected--remark = { $text } is not needed: the line was complete before it. A remark goes after //. Example: { $example }
word-unexpected--remark-fix = Make it a comment
# $text (name)
# $near (name)
word-unexpected--filler = No { $text } goes here. Write { $near }.
# $text (name)
# $example (name)
word-unexpected--end = { $text } is not needed: the line was complete before it. Example: { $example }
# $near (name)
word-unexpected--fix = Change to { $near }
# $text (name)
word-unexpected--drop = Remove { $text }
# $choices (list)
# $example (name)
line-unfinished = The line is not complete. Expected next: { $choices }. Example: { $example }

# $kind (list)
# $text (name)
unknown-name = There is no { $kind } named { $text }.
# $kind (list)
# $text (name)
# $near (name)
unknown-name--near = There is no { $kind } named { $text }. Did you mean { $near }?
# $kind (list)
# $text (name)
# $choices (list)
unknown-name--choices = There is no { $kind } named { $text }. The names are: { $choices }.
# $kind (list)
# $text (name)
# $file (name)
unknown-name--use = There is no { $kind } named { $text } here. It is in { $file }. Add a use line.
# $near (name)
unknown-name--fix = Change to { $near }
# $file (name)
unknown-name--use-fix = Add use "{ $file }"
# $text (name)
# $is (message)
# $kind (message)
wrong-kind = { $text } is { $is }. Expected here: { $kind }.
# $text (name)
# $is (message)
# $kind (message)
# $near (name)
wrong-kind--near = { $text } is { $is }. Expected here: { $kind }, such as { $near }.
# $text (name)
# $near (name)
wrong-kind--foot = { $text } is a strut. A strap or chain is anchored to its base plate: write { $near }.
# $text (name)
wrong-kind--declared = { $text } is named here
# $text (name)
# $vehicle (text)
unknown-part = Part { $text } not found in { $vehicle }.
# $text (name)
# $vehicle (text)
# $near (name)
unknown-part--near = Part { $text } not found in { $vehicle }. Did you mean { $near }?
# $text (name)
# $vehicle (text)
# $choices (list)
unknown-part--choices = Part { $text } not found in { $vehicle }. Its parts: { $choices }.
# $text (name)
# $vehicle (text)
# $type (name)
unknown-part--without = Part { $text } not found in { $vehicle }: { $type } says that it has no { $text }. Use another part.
# $type (name)
unknown-part--without-here = { $type } has no such part
# $text (name)
# $type (name)
unknown-part--nothing-to-drop = { $type } extends no type that has a part { $text }, so there is nothing to leave out.
# $text (name)
# $near (name)
unknown-part--vehicle = { $text } is a vehicle. Its part goes after it, such as: { $near }
# $text (name)
# $vehicle (text)
unknown-part--none = Part { $text } not found: no parts are described for { $vehicle }.
# $text (name)
# $vehicle (text)
unknown-axle = Axle { $text } not found in { $vehicle }.
# $text (name)
# $vehicle (text)
# $choices (list)
unknown-axle--choices = Axle { $text } not found in { $vehicle }. Its axles: { $choices }.
# $text (name)
unknown-rule = There is no check named { $text }.
# $text (name)
# $near (name)
unknown-rule--near = There is no check named { $text }. Did you mean { $near }?
# $text (name)
name-twice = The name { $text } is already in use. Two things in one plan cannot share a name.
# $text (name)
name-twice--first = the first { $text }
# $near (name)
name-twice--fix = Rename to { $near }
# $text (name)
# $path (name)
type-cycle = { $text } extends itself: { $path }.
# $text (name)
# $path (name)
value-cycle = { $text } is calculated from itself: { $path }.
# $text (name)
unused-name = { $text } is never used.
# $text (name)
unused-name--fix = Remove { $text }
# $file (name)
unused-use = Nothing from { $file } is used here.
unused-use--fix = Remove this line

# $text (name)
number-malformed--not-a-number = { $text } is not a number. Write digits, such as 38.5 or 3 1/2.
# $text (name)
number-malformed--comma = In { $text }, a comma must separate each group of three digits, as in 36,000.
# $text (name)
# $near (name)
number-malformed--decimal-comma = In { $text }, the comma is not clear. Write { $near }, or three digits after the comma.
# $text (name)
number-malformed--decimal-fraction = { $text } has a decimal point and a fraction. Write only one of them.
# $text (name)
number-malformed--zero = { $text } divides by zero.
# $text (name)
number-malformed--two-fractions = { $text } has two fractions. Write only one of them.
# $text (name)
number-malformed--too-large = { $text } is too large to be a real value.
# $text (name)
# $near (name)
number-malformed--dash = In { $text }, the dash would be a minus sign. Write { $near }.
# $text (name)
# $near (name)
number-malformed--thousand = In { $text }, the k is not read. Write { $near }.
# $text (name)
# $thousands (name)
# $plain (name)
number-malformed--point = In { $text }, the point is not clear. Write { $thousands } or { $plain }.
# $text (name)
# $near (name)
number-malformed--space = In { $text }, a space splits the number. Write { $near }.
# $text (name)
# $near (name)
number-malformed--gap = In { $text }, the fraction has a space in it. Write { $near }.
# $text (name)
# $near (name)
number-malformed--letters = { $text } has letters for digits. Write { $near }.
# $text (name)
# $near (name)
number-malformed--words = Write numbers in digits: { $near }, not { $text }.
# $text (name)
# $example (name)
number-malformed--about = No { $text } goes here. For a value that is not known exactly, write a range: { $example }.
# $near (name)
number-malformed--unit-first = The unit follows its number. Write { $near }.
# $near (name)
number-malformed--fix = Write { $near }
# $text (name)
# $due (list)
# $example (list)
unit-missing = { $text } has no unit. Write { $due }, such as { $example }.
# $near (name)
unit-missing--fix = Write { $near }
# $text (name)
# $percent (name)
# $example (name)
percent-missing = { $text } without a percent sign means { $percent }. Write { $example }.
# $text (name)
# $due (list)
# $example (name)
unit-unknown = { $text } is not a unit. Write { $due }, such as { $example }.
# $text (name)
# $near (name)
unit-unknown--near = { $text } is not a unit. Did you mean { $near }?
# $near (name)
unit-unknown--fix = Change to { $near }
# $unit (name)
# $before (name)
unit-order = { $unit } cannot follow { $before }. A length in two units reads 3 ft 4 in.
# $before (name)
# $unit (name)
unit-order--whole = Write a whole number of { $before } before { $unit }.
# $unit (name)
# $before (name)
unit-order--below-zero = { $unit } after { $before } cannot be below zero.
# $most (name)
# $unit (name)
# $before (name)
unit-order--too-many = { $most } { $unit } make one { $before }. Write less than { $most } { $unit }.
# $near (name)
feet-mark = Feet and inches each need their unit. Write { $near }.
# $near (name)
# $minus (name)
feet-dash = The dash here is not clear. For a length in feet and inches, write { $near }. For a difference, write { $minus }.
# $text (name)
# $is (message)
# $due (list)
# $example (name)
wrong-dimension = { $text } is { $is }. Expected here: { $due }, such as { $example }.
# $near (name)
wrong-dimension--fix = Change the unit to { $near }
# $left (name)
# $leftIs (message)
# $right (name)
# $rightIs (message)
# $advice (message, optional)
dimension-clash--added = { $left } is { $leftIs } and { $right } is { $rightIs }. They cannot be added. { $advice }
# $left (name)
# $leftIs (message)
# $right (name)
# $rightIs (message)
# $advice (message, optional)
dimension-clash--subtracted = { $left } is { $leftIs } and { $right } is { $rightIs }. They cannot be subtracted. { $advice }
# $left (name)
# $leftIs (message)
# $right (name)
# $rightIs (message)
# $advice (message, optional)
dimension-clash--range = { $left } is { $leftIs } and { $right } is { $rightIs }. They cannot form one range. { $advice }
# $near (name)
dimension-clash--near = Did you mean { $near }?
# $near (name)
dimension-clash--fix = Change to { $near }
range-unexpected = Write one value here, not a range.
# $example (list)
range-unexpected--example = Write one value here, not a range: { $example }.
# $near (name)
range-unexpected--fix = Keep { $near }
# $low (name)
# $high (name)
range-order = The range runs from { $low } down to { $high }. Write the smaller value first.
range-order--fix = Swap the two ends
# $text (name)
not-whole = { $text } must be a whole number.
not-whole--step = A step number must be a whole number.
# $text (name)
# $least (name)
too-small = { $text } is too small. The minimum here is { $least }.
# $text (name)
# $most (name)
too-large = { $text } is too large. The maximum here is { $most }.
# $text (name)
# $due (list)
below-zero = { $text } is below zero. Write { $due } of zero or more.
# $most (count)
calculation-too-long = This calculation has more than { $most } parts. Split it: name parts of it with let.
divided-by-zero = This divides by zero.
# $text (name)
date-malformed = { $text } is not a date. Write year-month-day, such as 2027-03-01.

use-misplaced = A use line belongs at the top of the file, not in a block.
use-malformed = After use comes a file in quotes: use "caches/rescue-12.crib"
use-malformed--two = Each file has its own use line.
use-malformed--two-fix = Give each file its own use line
# $near (name)
use-outside--slashes = A path is written with forward slashes: { $near }
# $path (name)
use-not-found = There is no file { $path }.
# $path (name)
# $near (name)
use-not-found--near = There is no file { $path }. Did you mean { $near }?
# $near (name)
use-not-found--fix = Change to { $near }
# $path (name)
use-outside = { $path } is outside this folder. Only files in this folder and the library can be used.
# $path (name)
use-unreadable--outside = { $path } is a link that leads outside this folder, so it is not read. Copy the file into the folder.
# $path (name)
use-unreadable--no-file = { $path } is not a file, so it is not read.
# $path (name)
use-unreadable--no-text = { $path } is not UTF-8 text, so it is not read. Save it as UTF-8 text, or name the correct file.
# $path (name)
use-unreadable--large = { $path } is larger than 4 MB, so it is not a plan file and is not read.
# $path (name)
use-unreadable--loop = { $path } is a link that leads back to itself, so it cannot be read.
# $path (name)
use-unreadable--permission = { $path } cannot be read: you have no permission to open it.
# $path (name)
use-unreadable--failed = { $path } exists but cannot be read.
use-unreadable--half = This path has half of a character in it, so no file can have that name. Type the file name again.
# $path (name)
use-not-crib = { $path } is not a plan file. Files used here end in .crib.
# $path (name)
use-cycle = These files use each other in a loop: { $path }.
use-itself = The file uses itself.
# $most (count)
# $files (count)
use-too-many = Files use each other more than { $most } deep, or more than { $files } files are used. Anything beyond that is not read.
# $path (name)
use-twice = { $path } is used twice.
# $path (name)
# $count (count)
# $file (name)
# $line (name)
use-not-whole = The plans here are NOT READ WHOLE. The files read through { $path } have { $count ->
     [one] 1 error
    *[other] { $count } errors
    }, the first in { $file }, line { $line }. Fix them there. Until then nothing here counts as safe.

# $pattern (name)
# $names (list)
argument-missing = { $pattern } also needs { $names }.
# $names (name)
argument-missing--fix = Add { $names }
# $pattern (name)
# $text (name)
# $names (list)
argument-unknown = { $pattern } has no { $text }. It takes { $names }.
# $text (name)
argument-twice = { $text } is given twice.
# $text (name)
# $due (phrase)
# $example (name)
argument-wrong = { $text } must be { $due }, such as { $example }.
# $pattern (name)
# $example (name)
arguments-missing = { $pattern } needs its values in parentheses: { $example }
# $text (name)
# $choices (list)
parameter-type = { $text } cannot be the type of a parameter. The types are: { $choices }.

# $example (name)
vehicle-missing = The plan has no vehicle. It needs at least one: { $example }
# $number (name)
step-twice = There are two steps { $number }. Each step needs its own number.
# $text (name)
# $near (name)
step-number-sign = A step starts with its number alone: { $near }, without { $text }.
# $example (name)
step-number-missing = A step starts with its number: { $example }
# $near (name)
step-number-missing--fix = Write { $near }
# $number (name)
step-unknown = There is no step { $number }.
# $what (name)
# $example (name)
tie-end-missing = { $what } is anchored at one end only. Add the other end: { $example }
# $part (name)
# $upper (name)
# $lower (name)
# $example (name)
contact-none = { $part } of { $upper } does not pass over { $lower } in this position. Check where { $lower } is, or state where they touch: { $example }
ground-missing = Ground not stated. The checks take it as unknown ground: lowest friction, and its allowable bearing is not known.
ground-missing--fix = Add the ground to fill in
plan-unchecked = This plan could not be read well enough to check it. NOTHING in it was checked.
# $title (name)
plan-unchecked--titled = The plan “{ $title }” could not be read well enough to check it. NOTHING in it was checked.
# $vehicle (name)
# $what (list)
# $example (name)
vehicle-size = Size of { $vehicle } not stated, so it cannot be checked. Add { $what }, such as: { $example }
# $vehicle (name)
vehicle-weight = { $vehicle } has no axles and no weight, so it cannot be checked. Use a type that has axles, or state its weight and center.
# $text (name)
value-unknown = { $text } cannot be calculated: a number in it cannot be read, a name in it is not known, its units do not match, or it divides by zero.
# $text (name)
value-unknown--member = { $text } does not exist.
# $vehicle (name)
value-unknown--turned = { $vehicle } stands across. Measure from the front of the main vehicle instead.
# $text (name)
value-unknown--circle = { $text } is placed by this one. State one of the two places by itself.
# $text (name)
value-unknown--no-point = { $text } is no single place along the vehicle. Measure from an axle, a kingpin, landing gear, or a support of this plan.
# $what (text)
not-in-plan = Not read, so the checks leave it out: { $what }. The plan is NOT fully checked.
not-in-plan--cargo = the cargo
not-in-plan--cab = the cab
not-in-plan--coupling = the coupling
not-in-plan--stands-on = the surface that it stands on
# $lower (name)
not-in-plan--rests-on = the load that rests on { $lower }
plan-not-whole = This plan is NOT READ WHOLE: part of it could not be read and is not checked. Nothing here counts as safe.
chock-ways = Direction of the chocks not stated in this step, so no chock is counted. Add both directions, forward or rearward.
chock-ways--fix = Chock both directions
# $load (name)
# $example (name)
load-height = Height of sideways load { $load } not stated, so the checks leave it out. The plan is NOT fully checked. Add it, such as: { $example }
# $count (count)
exercise-plan = This lesson has { $count } plans. State which plan this exercise is about.
# $on (name)
# $figure (name)
exercise-figure = { $on } has no { $figure }, so this exercise has no answer.
exercise-fault = No check finds a fault here, so this exercise has no answer.
# $on (name)
exercise-finish = The plan needs a fault on { $on } for this exercise, or a line to leave out.

### What the editor says beside findings and problems.
### prefix: editor

# $source (name)
source = Source: { $source }
# $governs (phrase)
governs = Governs: { $governs }
# $text (name)
# $other (name)
about = { $text } is { $other }
# $where (name)
declared-in = in { $where }
fix-all = Fix everything that has one safe answer
make-safe = Make This Plan Safe
could-not-run = This check did not run, so nothing here shows that the plan is safe.
# $why (name)
broke = The checks of this file stopped: { $why }. Do not rely on what is shown. Please report it.
# $count (count)
more = { $count ->
     [one] 1 more message is
    *[other] { $count } more messages are
    } not shown. Fix these first.
about-syntax = This message is about the text of a plan. The line could not be read. The rest of the plan is still checked, and each check that needs this line says so.
messages = Messages
fixes = Fixes offered
# $name (name)
library-name = { $name } comes with the tool and cannot be renamed. Copy it into a file of your own and rename the copy.
no-name = There is no name here to change.
# $name (name)
not-a-name = "{ $name }" cannot be a name. A name is one word: letters, digits and _, not starting with a digit.
# $name (name)
name-taken = The name { $name } is already in use here.
# $name (name)
# $what (message)
name-changes = With the name { $name } the plan would read differently. { $what } Choose another name.
moved-on = The text changed after the drawing was made. Try again.
no-file = The file is no longer there.
no-plan = There is no plan in this file.
safe = nothing unsafe found
safe-else = nothing else unsafe found
# $count (count)
accepted-count = { $count } accepted
# $by (name)
# $until (name)
# $reason (name)
# $message (message)
accepted = Accepted by { $by } until { $until }. Reason: { $reason }. { $message }
not-whole = NOT READ WHOLE
# $count (count)
dangers = { $count } unsafe
# $count (count)
warnings = { $count ->
     [one] 1 warning
    *[other] { $count } warnings
    }
# $count (count)
not-run = { $count } not checked
# $crib (name)
# $layout (name)
# $timber (name)
# $courses (count)
# $timbers (count)
# $use (quantity)
other-build = Build { $crib } { $layout } of { $timber }, { $courses } courses: { $timbers } timbers, { $use } of capacity used
# $rule (name)
# $on (phrase)
rule-on = { $rule } on { $on }
# $fix (message)
# $effect (message)
fix-effect = { $fix } ({ $effect })
# $fix (message)
# $what (list)
fix-raises = { $fix }. New unsafe findings: { $what }
# $fix (message)
fix-remains = { $fix }. Not enough by itself
pending = side push and worst loads not calculated yet
loads-pending = loads not calculated yet
see-drawing = See drawing
# $held (count)
# $all (count)
held-expectations = { $held } of { $all } expectations met
# $ways (list)
place-ways = { $ways }.
# $far (quantity)
place-from-front = { $far } back from the front
# $far (quantity)
place-from-rear = { $far } forward from the rear
# $far (quantity)
place-ahead-of-front = { $far } ahead of the front
# $far (quantity)
place-behind-rear = { $far } behind the rear
# $far (quantity)
# $axle (name)
place-ahead-of-axle = { $far } ahead of { $axle }
# $far (quantity)
# $axle (name)
place-behind-axle = { $far } behind { $axle }

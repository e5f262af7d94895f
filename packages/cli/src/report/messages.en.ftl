### What the command line prints around what the checks say.
### prefix: cli

could-not-read = COULD NOT READ
could-not-run = COULD NOT RUN
error = ERROR
danger = DANGER
warning = WARNING
note = NOTE
# $severity (message)
accepted-severity = ACCEPTED { $severity }
fix = fix
governs = governs
see = see
sources = sources
nothing-found = nothing found
# $count (count)
expected-and-so = { $count } as expected
# $text (phrase)
# $why (phrase)
expected-but = expected { $text }, but { $why }
not-whole = NOT READ WHOLE. What is missing was not checked, and nothing here counts as safe.
not-read = not read
# $count (name)
more = { $count } more
# $count (name)
# $path (name)
more-in = and { $count } more of these in { $path }
# $by (name)
# $until (name)
# $reason (name)
accepted-by = accepted by { $by } until { $until }: { $reason }
# $count (count)
plans =
    { $count ->
        [one] 1 plan
       *[other] { $count } plans
    }
# $count (count)
dangers =
    { $count ->
        [one] 1 danger
       *[other] { $count } dangers
    }
# $count (count)
warnings =
    { $count ->
        [one] 1 warning
       *[other] { $count } warnings
    }
# $count (count)
notes =
    { $count ->
        [one] 1 note
       *[other] { $count } notes
    }
# $count (count)
accepted = { $count } accepted
# $count (count)
checks-not-run =
    { $count ->
        [one] 1 check could not run
       *[other] { $count } checks could not run
    }
# $count (count)
paths-not-read =
    { $count ->
        [one] 1 path could not be read
       *[other] { $count } paths could not be read
    }
as-stated = as stated
set-by-policy = set by the policy
invented = invented
not-known = not known
from-its-source = from its source
computed = calculated
# $sources (list)
computed-from = calculated from: { $sources }
not-expected = NOT EXPECTED
# $rule (name)
# $subject (name)
# $message (message)
finding-on = { $rule } on { $subject }: { $message }
as-expected = as expected
not-as-expected = NOT AS EXPECTED
nothing-expected = no expect line in this plan: add one
# $held (count)
# $all (count)
# $odd (count)
expectations-held = { $held } of { $all } expectations met; { $odd ->
        [one] 1 danger
       *[other] { $odd } dangers
    } not expected
# $path (name)
# $why (phrase)
path-not-read = { $path } could not be read: { $why }
# $path (name)
# $count (count)
problems-left-out = { $path }: { $count } more problems in the text are not listed
# $plan (name)
plan-not-whole = The plan “{ $plan }” was not read whole. What is missing was not checked.
# $by (name)
# $until (name)
# $reason (name)
justification = { $by }, until { $until }: { $reason }
list-may-lack = NOT READ WHOLE: part of what is needed may be missing from this list.
needs-nothing = needs nothing from a cache
needed = needed
carried = carried
short = short
short-mark = SHORT
syntax = Syntax
# $rule (name)
no-rule = There is no rule { $rule }.
# $near (name)
did-you-mean = Did you mean { $near }?
see-list = See the list with: cribwright explain
gone = there is no such file or folder
outside = it is a link that leads outside this folder. Copy the file into the folder, or name the file itself
not-a-file = it is not a file
not-text = it is not text in UTF-8. Save it as UTF-8 text
too-large = it is larger than 4 MB, so it is not a plan
looping-link = it is a link that leads back to itself
not-permitted = there is no permission to open it
failed = it could not be opened
no-plan-file = it has no .crib file
input-empty = the standard input is empty
no-plan = there is no plan in it, so nothing was checked
input-too-large = The standard input is larger than 4 MB, so it is not a plan.
input-not-text = The standard input is not text in UTF-8. Save it as UTF-8 text.
written-lacks = NOT READ WHOLE. What could not be read is missing from what is written.
# $path (name)
nothing-to-draw = There is no plan in { $path } that can be drawn.
# $path (name)
no-lesson = There is no lesson in { $path }.
# $exercise (text)
# $why (message)
no-key = { $exercise } has no answer key. { $why }
# $text (name)
quoted = “{ $text }”
# $plan (name)
# $plans (list)
no-plan-named = There is no plan “{ $plan }” in this file. There are: { $plans }.
# $stage (name)
# $last (name)
no-stage = There is no stage { $stage }. This plan has stages 0 (as found) to { $last }.
# $word (name)
no-view = There is no view “{ $word }”.
# $word (name)
no-theme = There is no theme “{ $word }”.
# $word (name)
no-support = There is no support “{ $word }”.
# $word (name)
no-loss = There is no loss “{ $word }”.
plan-has-none = This plan has none.
# $names (list)
there-are = There are: { $names }.
which-folder = Say which folder to write to: -o FOLDER.
# $why (name) - what the system says, in its own language
broke = Something broke, so the result is not complete: { $why }
# $why (name) - what the system says, in its own language
output-fault = The output could not be written, so it is not complete: { $why }

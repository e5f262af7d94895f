### What the command line prints around what the checks say.
### prefix: cli

caution = Limits of this tool.
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
expected-and-so = { $count } expected, and so it is
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
computed = worked out
# $sources (list)
computed-from = worked out from: { $sources }
not-expected = NOT EXPECTED
# $rule (name)
# $subject (name)
# $message (message)
finding-on = { $rule } on { $subject }: { $message }
as-expected = as expected
not-as-expected = NOT AS EXPECTED
nothing-expected = nothing was expected: add an `expect` line
# $held (count)
# $all (count)
# $odd (count)
expectations-held = { $held } of { $all } expectations held; { $odd ->
        [one] 1 danger
       *[other] { $odd } dangers
    } not expected
# $path (name)
# $why (phrase)
path-not-read = { $path } could not be read: { $why }
# $path (name)
# $count (count)
problems-left-out = { $path }: { $count } more problems of the text are left out
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
syntax = the writing
# $rule (name)
no-rule = There is no rule { $rule }.
# $near (name)
did-you-mean = Did you mean { $near }?
see-list = See the list with: cribwright explain
gone = there is no such file or folder
outside = it is a link that leads outside this folder. Copy the file into the folder, or name it by itself
not-a-file = it is no file
not-text = it is not text in UTF-8. Save it as UTF-8 text
too-large = it is larger than 4 MB, so it is no plan
looping-link = it is a link that leads back to itself
not-permitted = there is no permission to open it
failed = it could not be opened
no-plan-file = no .crib file is in it
input-empty = the standard input is empty
no-plan = there is no plan in it, so nothing was checked

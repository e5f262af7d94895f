### What `cribwright compare` prints.

# $before (name)
# $after (name)
title = Changes from { $before } to { $after }
# $before (name)
title-here = Changes from { $before } to the files here
no-change = Nothing changed in meaning.
# $count (count)
compared =
    { $count ->
        [one] 1 plan compared
       *[other] { $count } plans compared
    }
# $count (count)
worse =
    { $count ->
        [0] no plan is less safe
        [one] 1 plan is less safe
       *[other] { $count } plans are less safe
    }
added = added
removed = removed
# $name (name)
renamed-from = renamed, was { $name }
# $path (name)
moved-from = moved, was in { $path }
# $before (name)
# $after (name)
line = { $before } → { $after }
unsafe = UNSAFE
not-checked = NOT CHECKED
no-danger = no danger found
no-plan = no plan
# $before (message)
# $after (message)
verdict = { $before } → { $after }
finding-new = new
finding-gone = gone
finding-worse = worse
finding-better = better
finding-accepted = accepted
finding-no-longer-accepted = no longer accepted
figures = Figures
# $by (quantity) - share
by = { $by }
# $by (quantity) - share
by-more = +{ $by }
# $by (quantity) - share
by-less = −{ $by }
findings = Findings
stock = Stock
changes = Changes in the text
# $item (phrase)
# $before (count)
# $after (count)
needed = { $item }: needs { $before } → { $after }
# $short (count)
short = short by { $short }
# $item (phrase)
needed-unknown = { $item }: how many are needed is not known
# $count (count)
more-figures =
    { $count ->
        [one] 1 more figure moved
       *[other] { $count } more figures moved
    }
text-lines-alone = The text changed; no check, figure or stock did.
by-use = Its own text is the same. A file that it uses changed.
before = Before
after = After
drawing = Drawing. What changed is marked.
element = Element
figure = Figure
change = Change
rule = Rule
message = Finding
plans = Plans
verdict-heading = Result
not-all-compared = NOT ALL COMPARED. What could not be read is missing here.
no-git = Git was not found, so no revision can be read. Name two files or two folders.
no-repository = There is no such file or folder, and this folder is in no git repository.
no-revision = There is no such file, folder or git revision.
git-failed = Git could not read the revision.
looser = LOOSER LIMIT
limit-changed = limit changed
# $policy (name)
# $limit (name)
limit = { $policy }, { $limit }

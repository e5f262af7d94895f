### What `cribwright fix` prints.

nothing-to-do = Nothing unsafe was found. Nothing was changed.
# $number (count)
# $title (phrase)
step = { $number }. { $title }
left = STILL UNSAFE
# $count (count)
no-fix =
    { $count ->
        [one] 1 finding is left. No fix that the checks offer helps, alone or with another. Change the plan by hand.
       *[other] { $count } findings are left. No fix that the checks offer helps, alone or with another. Change the plan by hand.
    }
# $count (count)
all-safe =
    { $count ->
        [one] Nothing unsafe is left after 1 step. Read the plan again before you rely on it.
       *[other] Nothing unsafe is left after { $count } steps. Read the plan again before you rely on it.
    }
expectation = Change this expect line by hand:

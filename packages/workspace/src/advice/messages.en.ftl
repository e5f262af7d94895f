### What a change that was tried does.
### prefix: advice

nothing-to-do = Nothing unsafe was found. There is nothing to change.

# $count (count)
no-fix =
    { $count ->
        [one] No fix that the checks offer helps. 1 finding is left. Change the plan by hand.
       *[other] No fix that the checks offer helps. { $count } findings are left. Change the plan by hand.
    }

# $count (count)
all-safe =
    { $count ->
        [one] 1 change leaves nothing unsafe. Look at it before you apply it.
       *[other] { $count } changes leave nothing unsafe. Look at them before you apply them.
    }

# $count (count)
# $left (count)
some-left =
    { $count ->
        [one] 1 change helps.
       *[other] { $count } changes help.
    } { $left ->
        [one] 1 finding is still unsafe: change the plan by hand.
       *[other] { $left } findings are still unsafe: change the plan by hand.
    }

# $label (phrase)
# $before (quantity)
# $after (quantity)
effect = { $label }: { $before } to { $after }

# $rule (name)
# $on (text)
rule-on = { $rule } on { $on }

# $before (count)
# $after (count)
unsafe = unsafe or not checked: { $before } → { $after }

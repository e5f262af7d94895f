title = Listed twice or built twice
protects = A timber that is counted twice is on scene only once.

# $unit (name)
# $item (phrase)
# $first (count)
# $second (count)
listed-twice = { $unit } lists { $item } twice, with { $first } and with { $second }. The smaller number is used. Correct the list.

# $support (phrase)
# $first (count) - number of the step
# $second (count) - number of the step
built-twice = Steps { $first } and { $second } both build { $support }. Build it in one step only.

first-here = First listed here.

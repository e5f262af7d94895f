title = Not enough personnel
protects = If a plan needs more personnel than are on scene, the crew builds it in a hurry, or only in part.

# $needed (count)
# $steps (list) - their numbers
# $have (count)
short = Steps { $steps } run at the same time and take { $needed } people. Staffing is { $have }. Let some of these steps wait, or request more personnel.

# $step (count) - its number
# $needed (count)
# $have (count)
one-step = Step { $step } takes { $needed ->
        [one] 1 person
       *[other] { $needed } people
    }. Staffing is { $have }. Request more personnel.

# $needed (count)
unknown = Staffing not stated. The steps take { $needed ->
        [one] 1 person
       *[other] { $needed } people
    } at peak.

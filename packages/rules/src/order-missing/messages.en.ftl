title = Steps missing or out of order
protects = A support that no step puts in is not there when it is needed. A support put in too early has nothing to rest on.

no-steps = Build order not stated. Write the steps.

# $support (phrase)
no-step = No step puts in { $support }.

# $support (phrase)
never-locked = No step locks { $support }. Lock it before anyone works in the path of the load.

# $step (count)
# $vehicle (phrase)
# $first (count)
chocks-first = Step { $step } works at { $vehicle } before its wheels are chocked (step { $first }). Chock first.

# $step (count)
# $tie (phrase)
# $support (phrase)
ends-first = Step { $step } tightens { $tie } before { $support } is set. Tighten a strap or chain when both of its ends are in place.

# $step (count)
# $support (phrase)
# $first (count)
lock-late = Step { $step } checks { $support } before it is locked (step { $first }). Lock first.

# $steps (list)
circle = Steps { $steps } wait for each other, so none of them can start. Remove one `after`.

# $step (count)
# $support (phrase)
remove-early = Step { $step } removes { $support }, but no earlier step puts it in.

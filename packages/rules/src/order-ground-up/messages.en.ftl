title = Upper vehicle stabilized before the lower one
protects = A support built on something loose moves with it. Stabilize the lower vehicle first.

# $step (count)
# $upper (name)
# $lower (name)
# $advice (message)
lower-first = Step { $step } stabilizes the { $upper } before the { $lower } below it. Build from the ground up. { $advice }

# $lower (name)
lower-never = No step stabilizes the { $lower }. Stabilize it in an earlier step.

# $first (count)
move-after = Do step { $first } first.

# $step (count)
# $support (phrase)
# $pad (name)
base-first = Step { $step } builds { $support } before pad { $pad } below it is in place. Place the pad first.

# $lower (name)
held-here = The { $lower } is stabilized here.

# $step (count)
# $first (count)
fix-after = Make step { $step } wait for step { $first }

title = Strut too flat, too steep, or not at its stated angle
protects = A flat strut pushes its base out. A steep strut holds nothing sideways.

# $strut (name)
# $angle (quantity)
# $sum (calculation)
# $least (quantity)
# $advice (message, optional)
too-flat = Strut { $strut } is at { $angle } to the ground ({ $sum }). The minimum is { $least }. A flatter strut pushes out more than up. { $advice }

# $strut (name)
# $angle (quantity)
# $sum (calculation)
# $most (quantity)
# $advice (message, optional)
too-steep = Strut { $strut } is at { $angle } to the ground ({ $sum }). The maximum is { $most }. A steeper strut holds nothing sideways. { $advice }

# $strut (name)
upside = Strut { $strut }: the head is not above the base. A strut pushes up from the ground.

# $strut (name)
# $typed (quantity)
# $angle (quantity)
# $sum (calculation)
not-as-typed = Strut { $strut }: the stated angle is { $typed }. The angle from base to head is { $angle } ({ $sum }).

# $out (name) - as the plan will read
set-foot = Set the base { $out } out.

# $limit (quantity)
set-here = The limit is set here: { $limit }.

# $out (name) - as the plan will read
fix-foot = Set the base { $out } out

# $angle (name) - as the plan will read
fix-typed = Write { $angle }

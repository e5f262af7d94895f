title = Too much packing on a crib
protects = A pile of loose shims slides out or tips over when the load moves. Courses lock into each other.

# $crib (name)
# $shims (quantity)
# $limit (quantity)
# $advice (message)
shims = Crib { $crib } has { $shims } of shims. The limit is { $limit }. Loose boards slide out and tip over. { $advice }

# $crib (name)
# $packing (quantity)
# $limit (quantity)
# $sum (calculation)
# $advice (message)
packing = Crib { $crib } has { $packing } of shims and wedges ({ $sum }). The limit is { $limit }. { $advice }

# $limit (quantity)
limit-set-here = The limit is set here: { $limit }.

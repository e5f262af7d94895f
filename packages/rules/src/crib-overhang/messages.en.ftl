title = Overhang too short or too long
protects = Timber ends that are too short split off, and the timbers walk out under load. Ends that are too long make the base narrower and lower the height limit.

# $crib (name)
# $overhang (quantity)
# $least (quantity)
too-short = Crib { $crib }: the timbers overhang the contacts by { $overhang }. The minimum is { $least }. Shorter ends split off, and the timbers walk out.

# $crib (name)
# $overhang (quantity)
# $most (quantity)
# $width (quantity)
too-long = Crib { $crib }: the timbers overhang the contacts by { $overhang }. The limit is { $most }. More overhang narrows the base, which is now { $width } wide.

# $limit (quantity)
set-here = The limit is set here: { $limit }.

# $overhang (name) - as the plan will read
fix-overhang = Use an overhang of { $overhang }

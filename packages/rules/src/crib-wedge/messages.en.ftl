title = Contact without wedges, or wedges opened too far
protects = A contact that is not snug carries nothing until the load has moved.

# $crib (name)
# $pairs (count)
# $loaded (count)
few = Crib { $crib } has { $pairs ->
        [one] 1 pair
       *[other] { $pairs } pairs
    } of wedges for { $loaded } loaded contacts. A contact without wedges may not be snug. Use { $loaded } pairs.

# $crib (name)
# $loaded (count)
none = Crib { $crib } has no wedges. Use { $loaded ->
        [one] 1 pair of wedges to make its loaded contact snug.
       *[other] { $loaded } pairs of wedges to make its { $loaded } loaded contacts snug.
    }

# $crib (name)
# $travel (quantity)
# $most (quantity)
travel = Crib { $crib }: each pair of wedges must close { $travel }. The limit is { $most }. Past that, the wedges bear on their tips. Use shims or another course.

# $pairs (count)
fix-pairs =
    { $pairs ->
        [one] Use 1 pair of wedges
       *[other] Use { $pairs } pairs of wedges
    }

title = Weights do not add up
protects = A wrong weight makes every load in the plan wrong.

# $vehicle (name)
# $stated (quantity)
# $sum (quantity)
# $parts (calculation)
differ = The stated empty weight of the { $vehicle } is { $stated }. Its axles and other supports carry { $sum } empty ({ $parts }). One of them is wrong. The plan uses the stated weight.

# $vehicle (name)
# $stated (quantity)
# $sum (quantity)
# $parts (calculation)
less-than-axles = The stated empty weight of the { $vehicle } is { $stated }. Its axles alone carry { $sum } empty ({ $parts }). One of them is wrong. The plan uses the stated weight.

# $vehicle (name)
fix-leave-out = Remove the weight and use the loads on the axles and other supports of the { $vehicle }

# $load (quantity)
carried-here = This carries { $load } empty.

title = Vehicle not held if a support fails
protects = A tire, an air spring, the landing gear or the vehicle below can fail while crews work. The supports that the crews set must then hold the vehicle.

# $loss (phrase) - what fails
# $end (phrase)
# $vehicle (text)
# $when (phrase)
falls = Support lost: { $loss }. Nothing holds { $end } of the { $vehicle }{ $when }. Put a support under it.

# $loss (phrase)
# $vehicle (text)
# $when (phrase)
balances = Support lost: { $loss }. The { $vehicle } only balances{ $when }. Put supports on both sides of its center of gravity.

# $loss (phrase)
# $vehicle (text)
unsolved = Support lost: { $loss }. No result for the { $vehicle }. Treat it as not held. This check has not passed.

lost-here = This support is lost.

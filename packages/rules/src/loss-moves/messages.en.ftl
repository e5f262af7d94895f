title = Moves if a support gives way
protects = When a tire, a vehicle beneath or the ground under a strut gives way, thrust, straps and friction must still be in balance.

# $loss (phrase)
# $what (phrase)
# $when (message, optional)
rolls = If this support is lost ({ $loss }), { $what } rolls{ $when }. Chock more axles in both directions.

# $loss (phrase)
# $what (phrase)
# $when (message, optional)
slides = If this support is lost ({ $loss }), { $what } slides{ $when }. The friction that is left does not hold it. Tie the strut bases together, or chock more axles.

# $loss (phrase)
# $what (phrase)
# $when (message, optional)
falls = If this support is lost ({ $loss }), nothing holds { $what }{ $when }. Add a support that stands by itself.

# $loss (phrase)
# $what (phrase)
# $when (message, optional)
moves = If this support is lost ({ $loss }), { $what } moves more than the checks allow before its supports hold it{ $when }. Treat it as not held.

# $loss (phrase)
# $what (phrase)
# $when (message, optional)
unsolved = How { $what } stands if this support is lost ({ $loss }) could not be calculated{ $when }. Treat it as not held. This check has not passed.

# $loss (phrase)
# $what (phrase)
# $stage (phrase)
# $when (message, optional)
worse = After { $stage }, { $what } moves if this support is lost ({ $loss }){ $when }. It was held before this step.

lost-here = This is the support that is lost.

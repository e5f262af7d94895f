title = Plan unsafe while partly built
protects = A stabilization system that holds when complete can fail while it is built or taken down.

# $stage (phrase)
# $end (phrase)
# $vehicle (text)
# $when (phrase)
falls = After this step ({ $stage }), nothing holds { $end } of the { $vehicle }{ $when }. Put in a support for it before this step.

# $stage (phrase)
# $end (phrase)
# $vehicle (text)
# $when (phrase)
# $loss (phrase)
worse = After this step ({ $stage }), nothing holds { $end } of the { $vehicle }{ $when } if this support is lost: { $loss }. It was held before this step.

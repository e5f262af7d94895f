title = End not supported
protects = A vehicle whose supports do not surround its center of gravity falls toward the open side.

# $end (phrase)
# $vehicle (text)
# $when (phrase)
falls = Nothing holds { $end } of the { $vehicle }{ $when }. Put a support under it.

# $vehicle (text)
# $when (phrase)
balances = The { $vehicle } only balances{ $when }. Put supports on both sides of its center of gravity.

# $vehicle (text)
unsolved = No result for the { $vehicle }. Treat it as not held. This check has not passed.

# $vehicle (text)
unknown = The { $vehicle }: weight or center of gravity not known, support check not run. State its axle loads, or its weight and center of gravity. This check has not passed.

# $vehicles (list)
mixes = Too many weights and positions are ranges ({ $vehicles }). Not every combination was tried, and a worse one may exist. Weigh or measure what you can, or plan fewer vehicles at a time. This check has not passed.

# $end (phrase)
# $vehicle (text)
# $when (phrase)
as-found = As found, nothing in the plan holds { $end } of the { $vehicle }{ $when }. It may fall at any time. State what holds it now, and keep clear until a support is in.

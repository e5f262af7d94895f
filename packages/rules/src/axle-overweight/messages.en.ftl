title = Axle load over the legal limit
protects = A wrong weight or position in the plan makes every other figure wrong.

# $first (name)
# $last (name)
# $load (quantity)
# $limit (quantity)
# $by (message) - which limit
over = { $first } to { $last } carry { $load }. The legal limit is { $limit } ({ $by }). Check the weights and positions in the plan. If they are right, the truck is overweight.

# $axle (name)
# $load (quantity)
# $limit (quantity)
# $by (message) - which limit
one-over = { $axle } carries { $load }. The legal limit is { $limit } ({ $by }). Check the weight in the plan. If it is right, the truck is overweight.

# $vehicle (name)
unknown = Axle loads of the { $vehicle } with its cargo not known. Legal limits not checked. Axle loads can be calculated only for a vehicle on two groups of axles, or on a kingpin and one group. This check has not passed.

# $limit (quantity)
limit-set-here = The limit is set here: { $limit }.

by-single = single axle
by-tandem = tandem, axles up to 96 in apart
by-bridge-formula = bridge formula
by-two-tandems = two tandems at least 36 ft apart
by-gross = whole truck

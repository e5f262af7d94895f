title = Two things in the same place
protects = A support that cannot be built as planned is built another way, and that way is not checked.

# $first (phrase)
# $second (phrase)
# $depth (quantity)
two-supports = Same place: { $first } and { $second } overlap by { $depth }. Move one of them.

# $first (phrase)
# $second (phrase)
# $depth (quantity)
body = Same place: { $first } overlaps { $second } by { $depth }. Move the crib.

# $first (phrase)
# $second (phrase)
# $depth (quantity)
wheels = Same place: { $first } overlaps a wheel of { $second } by { $depth }. Move the crib.

# $first (phrase)
# $second (phrase)
strut-through = Same place: { $first } passes through { $second }. Move one of them.

other-here = This is in the way.

# $first (name)
# $second (name)
# $depth (quantity)
vehicles = The { $second } and the { $first } are in the same place: they overlap by { $depth }. Move one of them, or state where one bears on the other.

# $first (name)
# $second (name)
# $depth (quantity)
vehicle-wheels = A wheel of the { $second } is where a wheel of the { $first } is: they overlap by { $depth }. Move one of the vehicles.

# $first (name)
# $second (name)
# $depth (quantity)
vehicles-maybe = The { $second } may be where the { $first } is: seen from above they overlap by { $depth }, and how high each is there is not known. Measure, or state where one bears on the other.

vehicle-here = The other vehicle is here.

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

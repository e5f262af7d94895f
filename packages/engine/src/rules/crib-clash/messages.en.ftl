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

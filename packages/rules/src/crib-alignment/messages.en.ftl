title = Contacts out of line, or captured part sloped
protects = A load that does not go straight down bends the timbers and pushes the crib over.

# $crib (name)
# $contact (count) - its number
# $off (quantity)
# $part (name)
# $vehicle (name)
# $most (quantity)
off-line = Crib { $crib }, contact { $contact }: { $off } off the { $part } of the { $vehicle } below it. The limit is { $most }. Move the crib in line.

# $crib (name)
# $part (name)
# $vehicle (name)
no-part-below = Crib { $crib } stands on the { $part } of the { $vehicle }, but the { $vehicle } has no such part.

# $crib (name)
# $part (name)
# $vehicle (name)
# $slope (quantity)
# $most (quantity)
sloped = Crib { $crib }: the { $part } of the { $vehicle } slopes { $slope }. The limit is { $most }. A steeper part slides off a flat crib. Fill the angle with wedges or a sloped top, and strap the crib in place.

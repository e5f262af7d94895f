title = Cribs of different timber under one vehicle
protects = The stiffer crib takes load that the softer crib should share.

# $first (name)
# $second (name)
# $vehicle (name)
# $one (message) - timber of the first
# $other (message) - timber of the second
# $times (quantity)
mixed = Cribs { $first } and { $second } support the { $vehicle } with different timber: { $one } and { $other }. The stiffer crib takes { $times } times the load for the same settlement. Build both of the same timber, or check their loads.

# $size (name)
# $species (name)
timber = { $size } { $species }

# $size (name)
# $species (name)
timber-wet = wet { $size } { $species }

other-here = The other crib is here.

title = Egress blocked, narrow or missing
protects = A rescuer who kneels at the vehicle must be able to get out at once, without looking for a way.

# $way (name)
# $what (phrase)
blocked = Egress { $way } is blocked by { $what }. Move it, or plan another egress.

# $way (name)
# $what (phrase)
across = Egress { $way }: { $what } crosses it near the ground and is a trip hazard. Move it out of the egress.

# $way (name)
# $width (quantity)
# $least (quantity)
narrow = Egress { $way } is { $width } wide. The minimum is { $least }.

none = Egress not stated. State where the rescuer kneels and which way the rescuer leaves.

in-the-way = This is in the way.

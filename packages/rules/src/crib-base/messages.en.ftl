title = Open base on soft ground, or pad too small
protects = On soft ground the two timbers of an open base sink unevenly and tip the crib.

# $crib (name)
# $surface (name)
# $pressure (quantity)
open-on-soft = Crib { $crib } has an open base on { $surface }, which is not paved. Its base timbers sink unevenly. Pressure on the ground: { $pressure }. Use a solid base or a pad.

# $crib (name)
# $pad (name)
# $size (quantity)
# $length (quantity)
short-pad = Crib { $crib } stands on pad { $pad }, which is { $size } on its short side. The base timbers are { $length } long and overhang it. Use a pad at least as long as the timbers.

# $crib (name)
no-pad = Crib { $crib } stands on a pad that is not in this plan.

fix-solid = Use a solid base

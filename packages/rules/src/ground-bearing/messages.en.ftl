title = Ground bearing exceeded
protects = A base that sinks on one side tips the load that it holds.

# $support (phrase)
# $pressure (quantity)
# $sum (calculation)
# $surface (name)
# $allowable (quantity)
# $advice (message, optional)
too-much = Ground under { $support }: pressure { $pressure } ({ $sum }). Allowable bearing of { $surface } is { $allowable }. { $advice }

# $support (phrase)
# $surface (name)
surface-unknown = Ground under { $support }: allowable bearing of { $surface } not known. State the bearing of the surface, or use a pad and watch it for settling. This check has not passed.

# $support (phrase)
# $surface (name)
# $advice (message)
foot-unknown = Ground under { $support }: base plate size not known, pressure on { $surface } not checked. { $advice } This check has not passed.

# $pad (quantity)
use-pad = Use a pad of at least { $pad }.

state-size = State the size of the base plate.

# $pad (quantity)
state-size-or-use-pad = State the size of the base plate, or use a pad of at least { $pad }.

# $size (name) - as the plan will read
# $material (message)
fix-pad = Use a { $material } pad of { $size }
timber = timber
steel = steel

surface-here = The allowable bearing is set here.

# $support (phrase)
# $edge (quantity)
# $pressure (quantity)
# $allowable (quantity)
# $surface (name)
edge = Ground under { $support }: the load is off the middle of the base. Edge pressure { $edge }, { $pressure } on the area that bears. Allowable bearing of { $surface } is { $allowable }. Center the load, or use a wider base.

# $pad (name)
# $support (phrase)
pad-material = Pad { $pad } under { $support }: material not stated. How far it spreads the load is not known. Write `material timber`, `plywood` or `steel`. This check has not passed.

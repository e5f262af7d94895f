# $support (phrase)
# $edge (quantity)
# $pressure (quantity)
# $allowable (quantity)
# $surface (name)
edge = { $support }: the load is off the middle of its base. The pressure at the edge is { $edge } ({ $pressure } on the part that bears). Allowable bearing of { $surface }: { $allowable }. Center the load, or use a wider base.

# $pad (name)
# $support (phrase)
pad-material = Pad { $pad } under { $support }: material not stated, so how far it spreads the load is not known. Write `material timber`, `plywood` or `steel`. This check has not passed.

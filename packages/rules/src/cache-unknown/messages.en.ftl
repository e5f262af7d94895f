title = Equipment of the units not known
protects = A plan fails on scene if no unit carries the equipment for it.

no-unit = Responding units not stated. Their equipment is not known. Name the units after `responding`.

# $unit (name)
empty-unit = The cache of { $unit } is empty. Its equipment is not known.

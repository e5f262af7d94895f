title = Cache not known
protects = A plan that no unit can supply fails on scene.

no-unit = Responding units not stated, so it is not known what they carry. Name them after `units respond`.

# $unit (name)
empty-unit = { $unit } responds, and its cache is empty. What it carries is not known.

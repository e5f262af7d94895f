title = Cache not known
protects = A plan that no unit can supply fails on scene.

no-unit = Responding units not stated. What they carry is not known. Name them after `responding`.

# $unit (name)
empty-unit = { $unit } responds, and its cache is empty. What it carries is not known.

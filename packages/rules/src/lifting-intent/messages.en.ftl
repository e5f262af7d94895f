title = Lift not stated
protects = Stabilizing is not lifting. A lifted vehicle shifts its load and can slide off its supports.

# $vehicle (name)
# $upward (quantity)
# $sum (calculation)
# $share (quantity)
# $limit (quantity)
lifts = Supports under the { $vehicle } push up with { $upward } in total ({ $sum }), { $share } of its weight. The limit without a lift is { $limit }. Set the supports snug, or write `lift intended`.

# $vehicle (name)
follow = Lift intended, but no crib captures the { $vehicle }. Lift an inch, crib an inch.

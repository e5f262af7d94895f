title = Vehicle tips over under a small push
protects = A vehicle with a high center of gravity near the edge of its supports tips over under a push or when its load shifts.

# $vehicle (text)
# $toward (phrase)
# $share (quantity)
# $sum (calculation)
# $limit (quantity)
tips = The { $vehicle } tips over { $toward } under a side push of { $share } of its weight ({ $sum }). The policy requires { $limit }. Set struts on both sides, or set supports farther out.

# $vehicle (text)
unknown = The { $vehicle }: height of the center of gravity not known, tipping check not run. State the height. This check has not passed.

# $limit (quantity)
set-here = The push margin is set here: { $limit }.

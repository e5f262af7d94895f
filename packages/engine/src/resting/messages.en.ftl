### prefix: range

lightest = lightest
heaviest = heaviest
center-front = center farthest to its front
center-rear = center farthest to its rear
load-front = its load shifted to its front
load-rear = its load shifted to its rear
driver-side = to the driver side
passenger-side = to the passenger side
tool-loads = with tool loads on
# $share (quantity)
# $first (phrase)
# $other (phrase)
between = { $share } of the way between { $first } and { $other }
# $body (text)
# $ends (list) - `heaviest`, `center farthest to its front`
body = { $body } { $ends }

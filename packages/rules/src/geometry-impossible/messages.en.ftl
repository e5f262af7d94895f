title = Impossible sizes or positions
protects = A wrong number in the plan makes every later figure wrong.

# $vehicle (name)
no-size = The { $vehicle } has no length, width or height. State its size.

# $part (name)
# $vehicle (name)
# $from (quantity)
# $to (quantity)
# $length (quantity)
part-outside = The { $part } of the { $vehicle } runs from { $from } to { $to }. The vehicle is { $length } long.

# $axle (name)
# $vehicle (name)
# $at (quantity)
# $length (quantity)
axle-outside = On the { $vehicle }, { $axle } is at { $at }. The vehicle is { $length } long.

# $cargo (name)
# $vehicle (name)
# $from (quantity)
# $to (quantity)
# $length (quantity)
cargo-outside = On the { $vehicle }, { $cargo } runs from { $from } to { $to }. The vehicle is { $length } long.

# $part (name)
# $vehicle (name)
height-backwards = The { $part } of the { $vehicle } is higher than the vehicle. Correct one of the heights.

# $upper (name)
# $lower (name)
# $at (quantity)
# $off (quantity)
rests-beside = The { $upper } rests on the { $lower } at { $at }, but the { $lower } is not there. Its nearest point is { $off } away.

# $upper (name)
# $part (name)
# $off (quantity)
rests-not-part = The { $upper } rests on its { $part }, but the { $part } is { $off } away from that place.

# $upper (name)
# $lower (name)
# $part (name)
# $under (name)
# $high (quantity)
# $low (quantity)
# $gap (quantity)
rests-gap = The { $upper } rests on the { $lower }, but there is a gap of { $gap } between the { $part } ({ $high }) and the { $under } ({ $low }). One of the heights is wrong.

# $vehicle (name)
no-weight = The { $vehicle } has no weight. Its axles carry nothing, and its weight is not stated.

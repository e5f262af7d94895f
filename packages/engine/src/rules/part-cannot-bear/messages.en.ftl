# $support (message)
# $part (name)
# $vehicle (name)
# $remark (name)
stands-on = { $support } stands on the { $part } of the { $vehicle }, which may not bear. { $remark } Stand it on the ground, or on a part that may bear.

# $name (name)
crib = Crib { $name }

# $name (name)
step-chock = Step chock { $name }

# $part (name)
part-here = The { $part } is described here.

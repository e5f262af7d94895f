title = Support under a part that cannot bear
protects = Sheet metal, tanks, moving parts and brackets fold or turn under a load that the frame would carry.

# $part (name)
# $vehicle (name)
# $support (phrase)
# $advice (message)
# $remark (name, optional) - what the plan says of the part
may-not-bear = The { $part } of the { $vehicle } cannot bear, and { $support } captures it. { $advice } { $remark }

# $part (name)
# $vehicle (name)
# $support (phrase)
# $advice (message)
no-part = The { $vehicle } has no { $part }, and { $support } captures it. { $advice }

# $vehicle (name)
# $support (phrase)
no-vehicle = Vehicle { $vehicle } is not in this plan, and { $support } captures it.

# $parts (list)
use-instead = Parts that can bear: { $parts }.

none-bears = No part of it is known to bear.

# $part (name)
fix-part = Capture the { $part } instead

# $support (phrase)
# $part (name)
# $vehicle (name)
# $remark (name, optional) - what the plan says of the part
stands-on = The { $part } of the { $vehicle } cannot bear, and { $support } stands on it. Stand it on the ground, or on a part that can bear. { $remark }

# $part (name)
part-here = The { $part } is described here.

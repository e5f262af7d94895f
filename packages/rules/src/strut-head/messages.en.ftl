title = Strut head on a part that moves or cannot bear
protects = A strut head on a door, a hood, a sprung cab or sheet metal slips or tears out under load.

# $strut (name)
# $part (name)
# $vehicle (name)
# $remark (name, optional) - what the plan says of the part
moves = Strut { $strut }: its head is on the { $part } of the { $vehicle }, which moves. Put it on a frame rail or a joist. { $remark }

# $strut (name)
# $part (name)
# $vehicle (name)
# $remark (name, optional) - what the plan says of the part
may-not-bear = Strut { $strut }: its head is on the { $part } of the { $vehicle }, which cannot bear. Put it on a frame rail or a joist. { $remark }

# $strut (name)
# $part (name)
# $vehicle (name)
# $advice (message)
no-part = Strut { $strut }: its head is on the { $part }, but the { $vehicle } has no such part. { $advice }

# $parts (list)
use-instead = Parts that can bear: { $parts }.

none-bears = No part of this vehicle is known to bear.

# $strut (name)
# $vehicle (name)
no-vehicle = Strut { $strut }: its head is on { $vehicle }, which is not in this plan.

# $strut (name)
# $part (name)
# $vehicle (name)
# $off (quantity)
# $reach (quantity)
beside = Strut { $strut }: its head misses the { $part } of the { $vehicle } by { $off }. The limit is { $reach }.

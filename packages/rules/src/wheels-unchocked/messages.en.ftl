title = Wheels not chocked
protects = A vehicle that rolls an inch moves every crib and strut out of line.

# $vehicle (name)
none = The { $vehicle } is on its wheels and they are not chocked. Chock it in both directions.

# $vehicle (name)
# $direction (message)
one-way = The { $vehicle } is chocked only against rolling { $direction }. Chock it in both directions.

# $vehicle (name)
# $grade (quantity)
# $direction (message)
on-a-grade = The { $vehicle } is on a grade of { $grade } and its wheels are not chocked against rolling { $direction }. Chock it in both directions.

forward = forward
rearward = rearward
either-way = in either direction

# $vehicle (name)
fix-chock = Chock the { $vehicle } in both directions

released = The parking brakes are stated as released.

# $name (name)
crib = crib { $name }
# $name (name)
step-chock = step chock { $name }
# $name (name)
strut = strut { $name }
# $name (name)
chock = wheel chock { $name }
# $step (name) - the number of the step that puts them in
chocks-of-step = wheel chocks (step { $step })
# $name (name)
pad = pad { $name }
# $name (name)
strap = strap { $name }
# $name (name)
chain = chain { $name }
# $name (name)
wire-rope = wire rope { $name }
# $number (count)
step = step { $number }
# $name (name)
vehicle = the { $name }
# $name (name)
egress = egress { $name }
# $crib (name)
# $contact (count)
contact = crib { $crib } contact { $contact }
# $name (name)
strut-upward = strut { $name }, upward
# $number (name)
axle = axle { $number }
# $vehicle (name)
cab = { $vehicle } cab
driver-side = driver side
passenger-side = passenger side
# $vehicle (name)
# $axle (text)
# $side (message)
wheel-end = { $vehicle } { $axle }, { $side }
# $vehicle (name)
# $part (name)
# $side (message)
part-side = { $vehicle } { $part } { $side }
# $vehicle (name)
# $part (name)
part = { $vehicle } { $part }
# $vehicle (name)
# $mount (name)
# $side (message)
cab-mount = { $vehicle } cab { $mount }, { $side }
front-driver-corner = front driver corner
front-passenger-corner = front passenger corner
rear-driver-corner = rear driver corner
rear-passenger-corner = rear passenger corner
# $vehicle (name)
# $corner (message)
lying-corner = { $vehicle } on the ground, { $corner }
# $lower (name)
# $upper (name)
vehicle-under = { $lower } under { $upper }

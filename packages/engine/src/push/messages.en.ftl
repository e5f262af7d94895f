toward-front = toward the front
toward-rear = toward the rear
toward-driver = toward the driver side
toward-passenger = toward the passenger side
toward-front-and-driver = toward the front and the driver side
toward-front-and-passenger = toward the front and the passenger side
toward-rear-and-driver = toward the rear and the driver side
toward-rear-and-passenger = toward the rear and the passenger side
# $strut (name)
strut-at-rating = strut { $strut } reaches its rated load
# $tie (text)
tie-at-rating = { $tie } reaches its rating
# $crib (name)
# $contact (name)
contact-at-capacity = crib { $crib } contact { $contact } reaches its capacity
# $crib (name)
crib-leans = crib { $crib } leans over
# $strut (name)
base-slides = the base of strut { $strut } slides
# $vehicle (text)
tips = the { $vehicle } tips over
# $vehicle (text)
slides = the { $vehicle } slides
# $vehicle (text)
nothing-holds = nothing holds the { $vehicle } on this side
weight-not-known = weight or center of gravity of the vehicle not known
height-not-known = height of the center of gravity not known
grip-not-known = the vehicle lies on the ground and the friction of its body there is not known; give the body friction of the surface
not-solved = no answer could be proven in one direction
assume-found = A way of sharing the forces that holds was found: the supports can hold this push. It is not proven that they must.
assume-struts = A strut that would push the body in the direction of the push counts as nothing.
assume-brakes = Brakes are not counted. Chocked axles are. A chock without an axle holds the last one.
assume-between = No friction is counted between one vehicle and another.
assume-lying = A vehicle that lies on the ground rests on the corners of its outline, and they do not fold. Supports beside it grip no better than its own metal: no load can be counted on to move there.
assume-kingpin = A kingpin whose tractor is not in the plan is held sideways by tire friction under its own load, and not lengthwise.
assume-friction = Friction is at the low end of its range.

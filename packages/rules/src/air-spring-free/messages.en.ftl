title = Cab left on its air springs
protects = A cab on air springs sways while tools work and drops when an air line is cut.

# $vehicle (name)
# $mounts (list)
on-air = The cab of the { $vehicle } still rides on its { $mounts }. It moves while tools work and drops if the air leaks out. Build a crib between the cab and the frame, or set struts under the cab.

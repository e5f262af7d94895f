# $what (text)
gives-way = { $what } gives way
# $tire (message)
tire-lost = { $tire }: tire lost
# $vehicle (name)
# $axle (text)
air-springs = { $vehicle } { $axle }: air springs deflated
# $vehicle (name)
# $mount (name)
cab-mount = { $vehicle } cab: { $mount } deflated
# $strut (text)
ground-under-strut = ground gives way under the base of { $strut }
# $support (text)
ground-under = ground gives way under { $support }
front = the front
rear = the rear
driver-side = the driver side
passenger-side = the passenger side
front-corner-driver = the front corner on the driver side
front-corner-passenger = the front corner on the passenger side
rear-corner-driver = the rear corner on the driver side
rear-corner-passenger = the rear corner on the passenger side
whole = the whole
one-side = one side
one-end = one end
# $end (message)
# $body (text)
end-of = { $end } of the { $body }
# $corner (list) - where in the ranges; starts with a blank, as it follows a name
with = { " " }with { $corner }
# $vehicle (name)
not-known = Weight or center of gravity of the { $vehicle } not known. The loads on its supports are not known.
# $bodies (list)
not-solved = How { $bodies } would rest could not be calculated. Treat as not supported.
# $what (message)
# $corner (message, optional)
falls = Nothing holds { $what }{ $corner }.
# $bodies (list)
# $corner (message, optional)
balances = { $bodies } only balances{ $corner }. Nothing keeps it from tipping.
slower = Calculated by the slower method.
as-found = as found
all-in-place = all in place
in-no-step = with supports that no step names
# $stage (message)
at-stage = at { $stage }
# $factor (name)
crew-stiffer = cribs and struts { $factor } times as stiff
# $factor (name)
crew-softer = cribs and struts { $factor } times as soft
# $factor (name)
beneath-stiffer = the vehicle beneath { $factor } times as stiff
# $factor (name)
beneath-softer = the vehicle beneath { $factor } times as soft

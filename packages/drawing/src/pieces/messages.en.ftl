### What is written on and beside the shapes of a drawing. A hole that holds a number holds it as it is printed.
### prefix: piece

# $name (name)
vehicle = vehicle { $name }
# $name (name)
# $place (name)
center-of-gravity = center of gravity of { $name }: { $place } back from the front
contacts-from-above = contacts from above
# $number (name)
# $part (text)
# $load (name)
# $capacity (name)
# $use (name)
contact-name = contact { $number }, meets { $part }, load { $load }, capacity { $capacity }, utilization { $use }
nothing = nothing
# $amount (name)
too-high = { $amount } higher than the part it captures
contact = contact
meets = meets
now = now
load-at-most = load, at most
worst = worst
capacity = capacity
use = utilization
none = none
not-counted = not counted
not-worked-out = not calculated
# $number (name)
# $timbers (name)
course-lengthwise = { $number }: { $timbers } lengthwise
# $number (name)
# $timbers (name)
course-crosswise = { $number }: { $timbers } crosswise
# $number (name)
# $timbers (name)
course-solid-lengthwise = { $number }: solid, { $timbers } lengthwise
# $number (name)
# $timbers (name)
course-solid-crosswise = { $number }: solid, { $timbers } crosswise
course-by-course = course by course, from the ground up
from-driver-side = from the driver side
from-behind = from behind
# $crib (name)
# $from (message)
seen = { $crib }, seen { $from }
# $height (name)
with-shims = { $height } with shims
# $limit (name)
limit = limit { $limit }
# $name (name)
# $width (name)
egress = egress { $name }, { $width } wide
# $name (name)
# $width (name)
egress-goes-on = egress { $name }, { $width } wide, continues past the drawing
driver-side = driver side
passenger-side = passenger side
far-side = on the far side
# $message (phrase)
not-checked = Not checked: { $message }
# $surface (name)
grade-not-stated = { $surface }, grade not stated
# $surface (name)
# $grade (name)
direction-not-stated = { $surface }, slopes { $grade }, direction not stated
# $surface (name)
level = { $surface }, level
# $surface (name)
# $grade (name)
slopes-front = { $surface }, slopes down { $grade } toward the front
# $surface (name)
# $grade (name)
slopes-rear = { $surface }, slopes down { $grade } toward the rear
# $surface (name)
# $grade (name)
slopes-driver = { $surface }, slopes down { $grade } toward the driver side
# $surface (name)
# $grade (name)
slopes-passenger = { $surface }, slopes down { $grade } toward the passenger side
faces-north = front faces north
faces-northeast = front faces northeast
faces-east = front faces east
faces-southeast = front faces southeast
faces-south = front faces south
faces-southwest = front faces southwest
faces-west = front faces west
faces-northwest = front faces northwest
# $facing (message)
north = north: { $facing }
north-letter = N
front = FRONT
contact-width = outside width of the contacts
crib-height = height of the crib
# $cribs (name)
# $height (name)
# $limit (name)
height-and-limit = { $cribs }: { $height }, limit { $limit }
# $cribs (name)
# $height (name)
height-limit-not-known = { $cribs }: { $height }, limit not known
# $words (name)
crib-words = crib { $words }
legend-vehicle = vehicle (outline for recognition only)
legend-part = rail, joist or other part
legend-timber = timber
legend-strut = strut
legend-tie = strap, chain or wire rope
legend-anchor = anchor in the ground
legend-chock = wheel chock
legend-pad = ground pad
legend-egress = egress
legend-center = center of gravity, and its range
legend-load = load on a contact, by area
legend-later = placed later
legend-unsafe = unsafe
legend-warning = warning
legend-note = note
# $name (name)
top-of = top of { $name }
# $element (phrase)
# $load (name)
load = { $element }: { $load }
# $element (phrase)
# $load (name)
# $before (name)
load-before = { $element }: { $load }, before { $before }
moved-title = how the loads move (bold: more than before)
before = before
after = after
lost = lost
not-known = not known
# $contacts (name)
smaller-changes = and { $contacts } contacts that change less
# $height (name)
spoken-height = { $height } high
# $angle (name)
spoken-angle = at { $angle }
# $load (name)
spoken-load = load { $load }
# $capacity (name)
spoken-capacity = capacity { $capacity }
# $use (name)
spoken-use = utilization { $use }
being-placed = being placed now
placed-later = placed later
taken-as-lost = assumed lost
# $by (name)
# $message (phrase)
accepted = Accepted by { $by }: { $message }
# $message (phrase)
could-not-run = Check could not run: { $message }
# $message (phrase)
danger = Danger: { $message }
# $message (phrase)
warning = Warning: { $message }
# $message (phrase)
note = Note: { $message }
# $share (name)
required = The policy requires { $share } of the weight from every direction
# $direction (message)
# $force (name)
# $share (name)
push-name = push toward { $direction }: holds up to { $force }, { $share } of the weight
# $direction (message)
# $force (name)
# $share (name)
# $how (phrase)
push-name-fails = push toward { $direction }: holds up to { $force }, { $share } of the weight. Fails first: { $how }
toward-front = toward the front
toward-rear = toward the rear
toward-driver = toward the driver side
toward-passenger = toward the passenger side
way-front = front
way-rear = rear
way-driver = driver side
way-passenger = passenger side
# $way (message)
# $degrees (name)
# $to (message)
way-between = { $way }, { $degrees } deg to { $to }
figure = figure
value = value
kind = kind
lock = lock
none-stated = none stated
# $case (phrase)
governing-case = Governing case for the load: { $case }.
# $length (name)
length = length { $length }
load-not-known = load not known
no-tie = no strap or chain at the base
# $name (name)
pull-not-known = { $name }, pull not known
# $name (name)
# $pull (name)
pulls = { $name } pulls { $pull }
# $words (name)
tie-name = strap or chain { $words }
# $load (name)
now-at-most = now at most { $load }
# $load (name)
now-load = now { $load }
# $load (name)
at-most = at most { $load }
# $load (name)
# $use (name)
at-most-use = at most { $load }, { $use }
over-limit = over the limit
near-limit = near the limit
under-limit = under the limit
legend-under = under 80 % of the limit
legend-near = 80 to 100 % of the limit
# $height (name)
# $limit (name)
height-over-limit = { $height }, limit { $limit }

### Labels of figures, what they are measured between, the cases that govern them, and what they assume.
### prefix: figure

a-sixth-of-the-width = a sixth of the width
# $species (name)
perpendicular-to-grain = { $species } perpendicular to grain
# $surface (name)
allowable-bearing-of = allowable bearing of { $surface }
allowable-stress-perpendicular-to-grain = allowable stress perpendicular to grain
# $load (phrase)
along-the-strut = { $load } along the strut
angle = angle
angle-as-written = angle as written
angle-to-the-ground = angle to the ground
area-of-the-foot = area of the base plate
area-on-the-ground = area on the ground
at-its-angle = at its angle
back-from-its-front = back from its front
bearing-length-factor = bearing length factor
between-the-outer-faces-of-the-outer = between the outer faces of the outer timbers
between-the-strap-and-the-way-the = between the strap and the way the base would slide, less what its rise takes from friction
between-the-strap-and-the-way-the-2 = between the strap and the way the base would slide, seen from above
# $spread (figure) - first to last axle of the group
# $axles (count)
bridge-formula = 500 lb × (L × N ÷ (N − 1) + 12 × N + 36), L = { $spread } in whole feet, N = { $axles }
capacity = capacity
capacity-along-the-post = capacity along the post
capacity-of-a-contact = capacity of a contact
cargo-at-its-heaviest-wherever-it-may = cargo at its heaviest, wherever it may lie
cargo-bears-on-two-groups-of-axles = cargo bears on two groups of axles by the lever rule, and evenly within a group
carried = carried
# $cargo (name)
center-of = center of { $cargo }
center-of-the-empty-vehicle = center of the empty vehicle
contacts-loaded = contacts loaded
contacts-that-meet-a-part = contacts that meet a part
courses = courses
courses-laid-on-the-ground = courses laid on the ground
crews-of-the-steps-under-way-at = crews of the steps under way at one time
crossing = crossing
depth-across-its-plies = depth across its plies
depth-along-its-plies = depth along its plies
distance-of-the-center-from-the-line = distance of the center from the line of the far supports
distance-of-the-center-of-gravity-inside = distance of the center of gravity inside the line of its supports
distance-of-this-support-from-that-line = distance of this support from that line
distance-to-the-nearest = distance to the nearest
distance-to-the-part = distance to the part
downward-force-at-the-foot = downward force at the base
dressed-depth = dressed depth
dressed-width = dressed width
each-step-starts-when-those-it-waits = each step starts when those it waits for are done
# $carrier (name)
empty = { $carrier } empty
empty-vehicle-cargo-at-its-heaviest = empty vehicle + cargo, at its heaviest
empty-vehicle-cargo-in-this-case = empty vehicle + cargo, in this case
empty-weight = empty weight
first-to-last-axle = first to last axle
foot-to-head-over-level-ground = base to head, over level ground
friction-needed = friction needed
# $surface (name)
friction-of-body-on = friction of its body on { $surface }
friction-of-its-tires = friction of its tires
# $surface (name)
friction-of-the-base-on = friction of the base on { $surface }
friction-that-holds-it = friction that holds it
friction-under-the-base = friction under the base
from-the-balance-of-all-forces = from the balance of all forces
from-the-chock-to-the-edge-of = from the chock to the edge of the part
from-the-contact-to-the-edge-of = from the contact to the edge of the part
from-the-foot-up-to-the-head = from the base up to the head
from-the-head-to-the-edge-of = from the head to the edge of the part
from-the-line-round-its-supports-to = from the line around its supports to its center of gravity, square to the line
from-under-the-head-to-the-foot = from under the head to the base
gap = gap
gap-left-above-the-step = gap left above the step
gap-that-the-wedges-close = gap that the wedges close
gap-to-close = gap to close
grade = grade
greatest-over-all-forces-that-only-push = greatest over all forces that only push and balance every vehicle
greatest-push-that-forces-within-friction-and = greatest push that forces within friction and capacity can balance
# $body (text)
half-width-of = half width of { $body }
height = height
height-limit = height limit
height-of-the-center-of-gravity = height of the center of gravity
height-of-the-push-above-the-ground = height of the push above the ground
height-of-the-step-that-meets-it = height of the step that meets it
its-load-empty-its-share-of-the = its load empty + its share of the cargo
least-depth = least depth
least-depth-of-the-plies-together = least depth of the plies together
least-load-on-wheels-that-cannot-roll = least load on wheels that cannot roll downhill
least-modulus = least modulus
least-modulus-wet-0-9 = least modulus, wet (× 0.9)
# $toward (phrase)
least-push-held = least push held, { $toward }, as a share of the weight
legal-limit = legal limit
length = length
# $body (text)
length-of = length of { $body }
load = load
load-as-built = load as built
# $place (phrase)
load-on = load on { $place }
load-on-these-axles = load on these axles
# $strut (name)
longest-of = longest { $strut }
measured-in-the-plan = measured in the plan
middle-of-all-weight-empty-vehicle-and = middle of all weight, empty vehicle and cargo, over the ground
# $body (text)
middle-of-loads-aside = middle of these loads, toward the passenger side: the center of gravity of { $body }
# $body (text)
middle-of-loads-back = middle of these loads, back: the center of gravity of { $body }
middle-of-the-loaded-contacts-off-the = middle of the loaded contacts off the middle of the crib
middle-of-what-its-axles-and-kingpin = middle of what its axles and kingpin carry
middle-third-of-the-length-it-lies = middle third of the length it lies on
modulus-perpendicular-to-grain = modulus perpendicular to grain
modulus-perpendicular-to-grain-crossing-height-of = modulus perpendicular to grain × crossing ÷ height of the courses
most-it-could-carry-by-statics-alone = most it could carry, by statics alone
most-people-at-work-at-one-time = peak crew
needed-at-the-busiest = needed at peak
of-all-that-stands-between-the-load = of all that stands between the load and the ground
# $crib (name)
of-crib = crib { $crib }
# $strut (name)
of-strut = strut { $strut }
of-the-section-in-the-way-it = of the section, in the way it would bend
off = off
off-the-part-beneath = off the part beneath
on-its-center-line = on its center line
overhang = overhang
overlap = overlap
pad-that-would-do = pad needed
pairs-of-wedges = pairs of wedges
people-who-come = staffing
pieces-of-every-support-that-stands-at = pieces of every support that stands at once
pitch-of-the-vehicle-and-grade-of = pitch of the vehicle and grade of the ground
place = place
place-of-the-last-axle-place-of = place of the last axle − place of the first
preload = preload
preload-of-the-wedges = preload of the wedges
pressure-on-the-ground = pressure on the ground
pretension = pretension
pull = pull
pull-downhill = pull downhill
# $strut (name)
pull-from-strut = pull from strut { $strut }
push-on-each-end-of-a-pair = push on each end of a pair, at the least
push-that-it-holds-up-to = push that it holds up to
push-that-tips-it-as-a-share = push that tips it, as a share of its weight
rated-load-at-that-length = rated load at that length
# $strut (name)
# $reach (figure)
rating-at = rating of { $strut } at { $reach }, the next longer row
rise = rise
run-along-the-ground = run along the ground
section = section
seen-from-above = seen from above
settled-when-it-was-placed = settled when it was placed
settling = settling
# $body (text)
settling-front = settling of { $body } at its front
# $body (text)
settling-rear = settling of { $body } at its rear
# $body (text)
settling-side = settling of { $body }, more at its passenger side
settling-since-it-was-placed = settling since it was placed
# $body (text)
settling-there = settling of { $body } there
share-of-the-pull-along-the-thrust = share of the pull along the thrust
share-of-the-weight = share of the weight
shims-and-wedges = shims and wedges
shims = shims
short-by = short
# $strut (name)
shortest-of = shortest { $strut }
sin-of-its-angle = sin of its angle
slenderness = slenderness
slenderness-across-its-plies = slenderness across its plies
slenderness-along-its-plies = slenderness along its plies
slope-of-the-captured-part = slope of the captured part
square-to-that-line = square to that line
squeezes-down-by = compression under load
steepest-wedge-that-stays-by-itself = steepest wedge that stays by itself
stiffness = stiffness
stiffness-of-a-contact = stiffness of a contact
straight-from-end-to-end = straight from end to end
# $species (name)
stress-allowed = allowable stress of { $species }
stress-along-the-grain = stress parallel to grain
stress-along-the-grain-wet-0-8 = stress parallel to grain, wet (× 0.8)
# $strut (name)
strut-upward-part = strut { $strut }, upward part
sum-of-the-least-that-each-of = sum of the least that each of these wheels carries
the-greatest-over-all-forces-that-only = the greatest over all forces that only push and balance every vehicle: no short sum shows it
the-heavy-end = the heavy end
the-high-end = the high end
the-high-end-of-the-head = the high end of the head
the-highest-step-that-goes-under = the highest step that goes under
the-load-rests-on-every-contact-that = the load rests on every contact that is counted, evenly, wedged tight
the-longest-it-may-be = the longest it may be
the-low-end-of-the-head = the low end of the head
the-post-is-straight-its-ends-are = the post is straight, its ends are cut square and it is loaded through the middle
the-most-that-they-are-to-close = the most that they are to close
the-range-of-the-height = the range of the height
the-slimmest-of-wedges-both-ends-driven = the slimmest of wedges, both ends driven at once, the preload shared evenly; steeper wedges take more
the-supports-share-the-load-in-the = the supports share the load in the way that is worst for this one, whatever their stiffness
the-supports-share-the-loads-of-all = the supports share the loads of all that rests on them in the way that is worst for this one
timber-length = timber length
timber-squeezes-perpendicular-to-grain-alone-all = timber compresses perpendicular to grain only, all courses in series
timbers-on-the-ground = timbers on the ground
time-from-first-to-last = time from first to last
toward-the-passenger-side = toward the passenger side
# $across (figure)
# $up (figure)
# $lies (message) - side-resting, roof-resting
turned = { $across } and { $up }, turned: { $lies }
# $part (name)
underside-of = underside of { $part }
underside-of-the-captured-part = underside of the captured part
upward-in-all = upward in all
# $load (phrase)
upward-part-of = { $load }, upward part
use-of-capacity = utilization
wedges-dry-and-without-grease-ice-or = wedges dry and without grease, ice or shaking, one face of the pair against metal; the slope is that of one wedge, sloped face to flat face
weight = weight
# $body (text)
weight-as-carried = weight of { $body } as its supports carry it
weight-as-written = weight as written
# $body (text)
weight-of = weight of { $body }
wet-service-factor = wet service factor
what-buckling-leaves-across-its-plies = column stability factor (Cp) across its plies
what-buckling-leaves-along-its-plies = column stability factor (Cp) along its plies
what-buckling-leaves-cp = column stability factor (Cp)
what-it-closes = closing
# $anchor (name)
what-it-holds = what { $anchor } holds
what-it-stands-on = base height
what-it-stands-on-carries = carried by its supports
width-of-the-way-out = egress width
width-outside-to-outside-of-contacts = width outside to outside of contacts
# $carrier (name)
with-cargo = { $carrier } with cargo
working-load-limit = working load limit
# $item (name)
# $length (quantity)
item-long = { $item } { $length } long
read-off-the-plan = read off what stands in the plan
# $contact (name)
contact = contact { $contact }
# $contact (name)
# $label (phrase)
contact-figure = contact { $contact }: { $label }
as-built = as built
# $all (count)
all-contacts-loaded = { $all ->
        [one] 1 contact
       *[other] all { $all } contacts
    } loaded
# $loaded (count)
# $all (count)
contacts-loaded-of = { $loaded } of { $all } contacts loaded
empty-vehicle-weighs-the-same-on-both-sides = the empty vehicle weighs the same on both sides of its centerline
cargo-center-in-the-middle-third = cargo fills its length and tapers evenly at most: its center lies in the middle third
center-of-gravity-back-from-the-front = center of gravity back from the front
center-of-gravity-toward-the-passenger-side = center of gravity toward the passenger side
center-of-gravity-above-the-ground = center of gravity above the ground
# $timber (name)
# $length (name) - as the plan will read
timber-of-length = { $timber } { $length } long
side-resting = side-resting
roof-resting = roof-resting
volume = volume
weight-per-volume = weight per volume
pieces-of-timber = pieces of timber
all-timbers-of-all-courses = all timbers of all courses
weight-of-its-timber = weight of its timber
load-and-weight-of-its-timber = load and the weight of its timber

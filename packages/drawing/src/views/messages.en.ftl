### The drawings: names, headings, captions. A hole that holds a number holds it as it is printed.
### prefix: view

top = Top
top-shows = The whole layout from above
top-title = Top view
side = Side
side-shows = The side elevation, from the driver side
side-title = Side elevation, from the driver side
end = End
end-shows = The end elevation, from behind
end-title = End elevation, from behind
crib = Crib
crib-shows = One crib close up, course by course, with its contacts
# $name (name)
crib-title = Crib { $name }
# $name (name)
crib-spoken = Crib { $name } close up
strut = Strut
strut-shows = One strut as a triangle, with its angle, forces and strap or chain
# $name (name)
strut-title = Strut { $name }
# $name (name)
strut-spoken = Strut { $name } as a triangle
side-push = Side push
side-push-shows = The side push that the plan holds, from every direction
side-push-title = Side push from every direction
side-push-spoken = Side push from every direction, and the share of the weight that is held
heights = Heights
heights-shows = Height of each crib against its limits with all, some and one of its contacts loaded
heights-title = Crib heights and limits
utilization = Utilization
utilization-shows = Utilization of each support, and the case that governs
utilization-title = Utilization of each support
timeline = Timeline
timeline-shows = The steps over time, with crew and critical path
timeline-title = Timeline
ground = Ground
ground-shows = Pressure under each crib and strut base against the allowable bearing
ground-title = Pressure on the ground
three-d = 3D
three-d-shows = The layout in three dimensions. The editor can rotate it
three-d-title = 3D view, from behind on the driver side

no-drawing = No drawing
# $view (name)
no-such-view = There is no view “{ $view }”.
waits = Not checked yet. The checks for this view are still running.
# $view (message)
nothing-to-show = This plan has nothing to show in the view “{ $view }”.
# $view (message)
# $reason (name)
failed = The view “{ $view }” could not be drawn ({ $reason }). The checks are not affected.

not-checked = not checked yet
not-checked-spoken = The checks have not run yet. No load and no limit is shown
not-whole = NOT READ WHOLE: part of this plan may be missing. Do not build from it.
# $file (name)
# $line (name)
# $problem (phrase)
not-read = Not read: { $file } line { $line }. { $problem }
# $more (name)
and-more = And { $more } more.
# $names (name)
# $more (name)
names-and-more = { $names } and { $more } more

# $number (name)
# $total (name)
# $title (phrase)
# $crew (message, optional)
# $duration (message, optional)
stage = Stage { $number } of { $total }: { $title }{ $crew }{ $duration }
# $crew (name)
comma-crew = , crew of { $crew }
# $duration (name)
comma-duration = , { $duration }
# $loss (phrase)
what-if-rests = What if: { $loss }. Then the load still rests.
# $loss (phrase)
# $free (phrase)
what-if-free = What if: { $loss }. Then nothing holds { $free }.
# $loss (phrase)
# $free (phrase)
unsafe-if = Unsafe: if { $loss }, nothing holds { $free }.
the-load = the load
unsafe = Unsafe:
not-checked-names = Not checked:
the-plan = the plan
the-ground = the ground
the-order = the order of work
the-size-up = the size-up
# $number (name)
step = step { $number }

timber = timber
end-of-a-timber = end of a timber
wedges = wedges
strut-sign = strut
tie-sign = strap, chain or wire rope
force = force
allowed-angles = angles that the policy allows
limit = limit
chosen-crib = selected crib
own-limit = its own limit
unsafe-sign = unsafe
not-known = not known
holds-share = holds up to this share of the weight
policy-requires = required by the policy
less-than-required = less than required
takes-this-long = duration
critical-sign = critical: the next step waits for it
may-take-longer = may take longer
allowable-bearing = allowable bearing
unsafe-or-not-known = unsafe, or not known
hidden-behind = hidden behind
front = FRONT

# $surface (name)
ground-surface = Ground: { $surface }
# $element (text)
# $pressure (name)
# $allowable (name)
ground-row = { $element }: { $pressure }, allowable bearing { $allowable }
ground-bar = pressure and allowable bearing
load-over-area = load ÷ area
pressure-not-known = pressure not known
allowable-not-known = allowable bearing not known
# $allowable (name)
allowable = allowable { $allowable }
# $size (name)
pad-needed = pad needed { $size }
# $element (text)
# $calculation (name)
# $allowable (name)
# $pad (message, optional)
ground-row-name = { $element }: { $calculation }, allowable bearing { $allowable }{ $pad }
# $size (name)
comma-pad-needed = , pad needed { $size }

all-contacts = all contacts
some-contacts = some contacts
one-contact = one contact
# $contacts (message)
# $ratio (name)
ratio-limit = { $contacts }: { $ratio } × width
# $contacts (message)
# $ratio (name)
ratio-limit-name = limit with { $contacts } loaded: { $ratio } times the width

push-toward = push toward
holds-up-to = holds up to
share = share
# $height (name)
# $least (name)
push-facts = Push at { $height } above the ground. The smallest push held is { $least } of the weight.
# $how (phrase)
fails-first = Fails first in that direction: { $how }.
push-no-promise = This is a calculated result. It is not proof that a push this large is safe.
# $grip (name)
# $source (name)
lies-on-ground = The vehicle lies on the ground: { $grip } ({ $source }).
# $least (name)
least-push = The smallest push held is { $least }
# $direction (text)
# $share (name)
toward-share = Toward { $direction }: { $share }

# $limit (name)
use-limit = limit { $limit }
# $support (text)
use-not-known = { $support }: utilization not known
# $support (text)
# $use (name)
use-spoken = { $support }: utilization { $use }
# $support (text)
# $use (name)
# $case (phrase)
use-spoken-case = { $support }: utilization { $use }. Governing case: { $case }
use-inputs-missing = not known: the load or the capacity is missing
# $load (name)
# $capacity (name)
load-of-capacity = { $load } of { $capacity }
# $capacity (name)
load-not-known-capacity = load not known; capacity { $capacity }
# $calculation (name)
worst-contact = ; worst contact { $calculation }
# $support (text)
# $numbers (name)
# $use (name)
# $level (message)
use-row-name = { $support }: { $numbers }, utilization { $use }, { $level }

# $crew (name)
crew-of = crew of { $crew }
# $number (name)
# $work (phrase)
# $start (name)
# $end (name)
# $crew (message, optional)
# $critical (message, optional)
step-name = step { $number }, { $work }, from { $start } to { $end }{ $crew }{ $critical }
comma-critical = , critical
# $number (name)
# $work (phrase)
# $start (name)
# $end (name)
# $crew (message, optional)
# $critical (message, optional)
step-spoken = { $number }. { $work }, { $start } to { $end }{ $crew }{ $critical }
comma-critical-spoken = , critical: the next step waits for it

### The sheet a crew carries. A hole that holds a number holds it as it is printed.
### prefix: field-sheet

# $policy (name)
policy = Policy { $policy }
# $policy (name)
# $authority (name)
policy-of = Policy { $policy }, { $authority }
findings = Findings
no-findings = The checks found nothing. They do not see the scene.
not-checked = not checked
# $by (name)
# $until (name)
# $reason (name)
# $message (phrase)
accepted = Accepted by { $by } until { $until }. Reason: { $reason }. { $message }
# $least (name)
push = The smallest side push held is { $least }.
# $least (name)
# $direction (phrase)
push-toward = The smallest side push held is { $least } ({ $direction }).
# $grip (name)
# $source (name)
lies-on-ground = The vehicle lies on the ground: { $grip } ({ $source }).
supports = Supports
losses = If a support is lost: maximum loads
order-of-work = Order of work
changes-on-scene = Changes on scene
as-found = As found
from-caches = From the caches
assumptions = Assumptions
looser = Looser than the shipped policy
# $limit (name)
# $reason (name)
looser-reason = { $limit }: { $reason }
# $limit (name)
looser-no-reason = { $limit }: no reason given
losses-not-run = The loss of a support was not checked.
as-built = as built
not-stable = not stable
# $cases (name)
smaller-cases = cases that move less: { $cases }
# $free (phrase)
nothing-holds = nothing holds { $free }
carry-nothing = the crew’s supports carry no load
the-load = the load
calculations = Calculations
calculations-not-run = The plan was checked without calculations.
# $title (phrase)
# $corner (phrase)
case-corner = { $title }: { $corner }
# $contacts (name)
idle-contacts = Other contacts, carrying no load: { $contacts }. No contact can pull.
support = support
how = build
height = height
height-limit = height limit
load = load
capacity = capacity
use = utilization
# $courses (name)
# $timber (name)
# $length (name)
# $lengthwise (name)
# $crosswise (name)
crib-build = { $courses } courses of { $timber }, { $length } long, { $lengthwise } by { $crosswise }
# $courses (name)
# $timber (name)
# $length (name)
# $lengthwise (name)
# $crosswise (name)
crib-build-solid = { $courses } courses of { $timber }, { $length } long, { $lengthwise } by { $crosswise }, base solid
no-lock = no lock
no-steps = The plan has no order of work.
# $crew (name)
crew = crew of { $crew }
# $time (name)
done-at = done at { $time }
total = total
# $crew (name)
peak-crew = peak crew { $crew }
no-cache = No material from a cache.
# $amount (name)
of-carried = of { $amount }
# $amount (name)
short = short { $amount }
# $name (name)
# $weight (name)
# $back (name)
# $height (name)
body = { $name }: { $weight }, center of gravity { $back } back, { $height } high
# $ground (message)
# $facing (message)
ground-facing = { $ground }, { $facing }

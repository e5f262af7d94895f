### What a line can go on with: kinds of things, dimensions, and single words.
### prefix: expected

# $what (phrase)
a = a { $what }
# $what (phrase)
an = an { $what }
kind-value = value
kind-tie = strap, chain or wire rope
kind-group = group
kind-cache = cache (a unit that responds)
kind-thing = thing
length = a length
force = a weight
mass = a mass
angle = an angle
ratio = a plain number
count = a count
pressure = a pressure
area = an area
volume = a volume
duration = a time
density = a mass per volume
unit-weight = a weight per volume
stiffness = a weight per length
moment = a moment
# $other (message)
weight-times = a weight times { $other }
# $power (name)
length-power = a length to the power { $power }
mixed = a mix of units
comma = a comma
calculation = a calculation
unit = a unit
part = a part of the vehicle
part-of-a-vehicle = a part of a vehicle
date = a date such as 2027-03-01
year-month-day = year-month-day
size = a size such as 4x4
rule = the name of a check such as crib-height
figure = height, width or length
end = end of the line
# $due (list)
# $example (name)
such-as = { $due } such as { $example }
# $kind (message)
# $names (list)
one-of = { $kind } ({ $names })
# $what (message)
in-quotes = { $what }, in quotes
# $what (message)
name-for = a name for the { $what }
name-value = value
name-group = group
name-mount = mount
name-part = part
text-title = a title
text-table-or-section = a table or section
text-what-is-remembered = what is remembered
text-address = an address
text-contact = a contact
text-access = an access route
text-hazard = a hazard
text-where = where
text-doors = doors
text-reason = a reason
text-who-sets-it = who sets it
text-what-to-mind = what to watch for
text-what-it-is = what it is
text-name = a name
text-question = a question
text-line-left-out = the line left out
text-hint = a hint
text-what-it-teaches = what it teaches
text-paragraph = a paragraph
text-crew = a crew
text-what-was-found = what was found
text-why-not = why not

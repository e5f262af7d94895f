### What an exercise asks, and why one has no answer.
### prefix: lesson

# $number (name)
exercise = Exercise { $number }
# $figure (name)
# $on (name)
work-out = Calculate the { $figure } of { $on }.
find-all = Find every fault.
# $on (name)
find-on = What is wrong with { $on }?
# $on (name)
finish = Finish { $on }.
asks-nothing = The exercise asks nothing. Add a line: work out, find or finish.
plan-not-stated = Plan not stated. Add the line: plan NAME.
plan-not-whole = Its plan could not be read whole.
# $on (name)
no-support = The plan has no support { $on }.
# $figure (name)
# $on (name)
no-figure = There is no { $figure } to calculate for { $on }.
# $figure (name)
# $on (name)
not-known = The { $figure } of { $on } is not known.
no-fault = No check finds a fault there.
# $on (name)
# $line (name)
no-line = { $on } has no line “{ $line }” to leave out.

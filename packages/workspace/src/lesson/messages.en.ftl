### What an exercise asks, and why one has no answer.
### prefix: lesson

# $number (count)
exercise = Exercise { $number }
width = width
# $figure (text)
# $on (text)
work-out = Calculate the { $figure } of { $on }.
# $figure (text)
# $on (text)
# $contact (count)
work-out-contact = Calculate the { $figure } of { $on } at contact { $contact }.
find-all = Find every fault.
# $on (text)
find-on = What is wrong with { $on }?
# $on (text)
finish = Finish { $on }.
# $on (text)
# $line (name) - a word of the plan language: `courses`
finish-line = Finish { $on }. Its line “{ $line }” is left blank.
asks-nothing = The exercise asks nothing. Add a line: work out, find or finish.
plan-not-stated = Plan not stated. Add the line: plan NAME.
plan-not-whole = Part of its plan could not be read.
# $on (text)
no-support = The plan has no support { $on }.
# $figure (text)
# $on (text)
no-figure = There is no { $figure } to calculate for { $on }.
# $figure (text)
# $on (text)
not-known = The { $figure } of { $on } is not known.
no-fault = No check finds a fault there.
# $on (name)
# $line (name)
no-line = { $on } has no line “{ $line }” to leave out.

### Why a change of the plan cannot be made in its text.
### prefix: edit

# $element (name)
not-here = { $element } is not in this plan's own text. Change it where it is written.
# $element (name)
no-body = { $element } has no lines of its own to change.
# $element (name)
from-pattern = { $element } comes from a pattern. Change the pattern, or write the support out in the plan.
# $value (name)
calculated = { $value } is calculated from other values, so it cannot be dragged. Change it in the text.
# $place (name)
by-part = Its position is given by a part ({ $place }). Write a distance instead to drag it.
# $value (name)
range = { $value } is a range, so it cannot be dragged. Change it in the text.
# $element (name)
no-place = { $element } has no line that gives its position. Write one to drag it.
# $element (name)
unreadable = The line that gives the position of { $element } cannot be read. Fix it first.
# $element (name)
cannot-move = { $element } cannot be dragged that way.
# $element (name)
no-step = { $element } is not a step of this plan's own text. Change the order of the steps by hand.

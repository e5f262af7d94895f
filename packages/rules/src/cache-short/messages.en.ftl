title = Not enough equipment on the responding units
protects = A crew that is short four timbers builds the crib lower, or with whatever is at hand.

# $item (phrase)
# $needed (quantity)
# $carried (quantity)
# $short (quantity)
# $advice (message)
short = Needed at peak: { $needed } { $item }. Units carry { $carried }, { $short } short. { $advice }

# $items (list)
stand-in = Possible substitutes: { $items }. Recalculate the plan with them.

call-more = Request another unit, or build with less.

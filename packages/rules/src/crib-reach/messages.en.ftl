title = Crib does not reach, or does not fit under, what it captures
protects = A crib that stops short of the load carries nothing until the load drops onto it.

# $crib (name)
# $vehicle (name)
# $part (name)
# $gap (quantity)
# $sum (calculation)
# $wedges (message)
# $advice (message)
short = Crib { $crib } does not reach the { $part } of the { $vehicle }. The gap is { $gap } ({ $sum }). { $wedges } { $advice }

# $closes (quantity)
wedges-close = Its wedges close { $closes }.

wedges-close-nothing = Its wedges close nothing.

# $crib (name)
# $vehicle (name)
# $part (name)
# $over (quantity)
# $sum (calculation)
# $advice (message)
tall = Crib { $crib } is { $over } too tall for the { $part } of the { $vehicle } ({ $sum }). { $advice }

# $crib (name)
# $closes (quantity)
# $gap (quantity)
# $sum (calculation)
# $advice (message)
loose = Crib { $crib }: the wedges do not fit. They need a gap of at least { $closes }. The gap is { $gap } ({ $sum }). { $advice }

# $chock (name)
# $vehicle (name)
# $part (name)
step-none = Step chock { $chock } is too tall for the { $part } of the { $vehicle } at every step. Use a lower one.

# $chock (name)
# $vehicle (name)
# $part (name)
# $gap (quantity)
# $sum (calculation)
step-gap = Step chock { $chock }: the gap between its step and the { $part } of the { $vehicle } is { $gap } ({ $sum }). Slide it to another step, or fill the gap with a wedge.

# $chock (name)
# $vehicle (name)
# $part (name)
# $off (quantity)
step-beside = Step chock { $chock } is { $off } away from the { $part } of the { $vehicle }. Slide it under.

# $courses (count)
# $gap (quantity)
use-courses = Use { $courses ->
        [one] 1 course
       *[other] { $courses } courses
    }. That leaves a gap of { $gap } for the wedges.

# $shims (name) - as the plan will read
use-shims = Use { $shims } of shims under the load.

measure-first = Measure the gap, then choose courses and shims to fit.

# $courses (count)
fix-courses =
    { $courses ->
        [one] Use 1 course
       *[other] Use { $courses } courses
    }

# $shims (name) - as the plan will read
fix-shims = Use { $shims } of shims

title = Crib too tall for its width
protects = A crib that is tall and narrow, or loaded on one side only, sways and tips over.

# $crib (name)
# $height (quantity)
# $loaded (message) - all-loaded or some-loaded
# $limit (quantity)
# $sum (calculation) - of the limit
# $advice (message)
too-high = Crib { $crib } is { $height } tall. The limit is { $limit } with { $loaded } ({ $sum }). { $advice }

# $contacts (count)
all-loaded =
    { $contacts ->
        [one] its 1 contact loaded
       *[other] all { $contacts } contacts loaded
    }

# $loaded (count)
# $contacts (count)
some-loaded =
    { $loaded ->
        [one] 1 of { $contacts } contacts loaded
       *[other] { $loaded } of { $contacts } contacts loaded
    }

# $courses (count)
use-courses =
    { $courses ->
        [one] Use 1 course.
       *[other] Use { $courses } courses.
    }

# $contacts (count)
# $limit (quantity)
# $courses (count)
capture-all = Capture all { $contacts } contacts (limit { $limit }), or use { $courses } { $courses ->
        [one] course
       *[other] courses
    }.

# $courses (count)
# $contacts (count)
# $more (count)
# $limit (quantity)
capture-and-lower = Use { $courses } { $courses ->
        [one] course
       *[other] courses
    }, or capture all { $contacts } contacts and use { $more } (limit { $limit }).

none-holds = No number of courses meets the limit. Use longer timbers.

# $ratio (quantity)
ratio-set-here = The height ratio is set here: { $ratio }.

# $loaded (message)
captured-here = Captures set here: { $loaded }.

# $courses (count)
fix-courses =
    { $courses ->
        [one] Use 1 course
       *[other] Use { $courses } courses
    }

# $contacts (count)
# $parts (name) - as the plan will read
fix-capture = Capture all { $contacts } contacts: { $parts }

title = Crib or contact overloaded
protects = Timber loaded beyond its capacity perpendicular to grain crushes, and the load leans and falls.

# $crib (name)
# $contact (count)
# $load (quantity)
# $governs (phrase)
# $capacity (quantity)
# $sum (calculation)
over-contact = Crib { $crib }, contact { $contact }: load up to { $load } ({ $governs }). Capacity { $capacity } ({ $sum }). Spread the load over more contacts or use larger timbers.

# $crib (name)
# $load (quantity)
# $governs (phrase)
# $contacts (count)
# $capacity (quantity)
# $sum (calculation)
over-whole = Crib { $crib }: load up to { $load } ({ $governs }). Capacity { $capacity } with { $contacts ->
        [one] 1 contact
       *[other] { $contacts } contacts
    } loaded ({ $sum }). Add a crib or use larger timbers.

# $crib (name)
# $contact (count)
# $load (quantity)
# $governs (phrase)
# $use (quantity)
# $capacity (quantity)
# $limit (quantity)
over-limit = Crib { $crib }, contact { $contact }: load up to { $load } ({ $governs }), { $use } of its capacity of { $capacity }. The policy allows { $limit }.

# $crib (name)
# $why (message)
unknown = Crib { $crib }: load not known. { $why } This check has not passed.

# $chock (name)
# $load (quantity)
# $governs (phrase)
# $capacity (quantity)
step-over = Step chock { $chock }: load up to { $load } ({ $governs }). Capacity { $capacity }. Use a crib or more step chocks.

# $chock (name)
# $load (quantity)
step-unrated = Step chock { $chock }: capacity not known, load up to { $load }. Take the rating from its manufacturer. This check has not passed.

# $chock (name)
# $why (message)
step-unknown = Step chock { $chock }: load not known. { $why } This check has not passed.

weigh-it = Give the weight and the center of gravity of what rests on it.

# $layout (name)
# $timber (message)
# $courses (count)
# $use (quantity)
fix-build = Build it { $layout } of { $timber }, { $courses ->
        [one] 1 course
       *[other] { $courses } courses
    } ({ $use } of its capacity)

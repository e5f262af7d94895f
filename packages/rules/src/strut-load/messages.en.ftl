title = Strut overloaded
protects = A strut loaded beyond its rating buckles without warning. The longer the strut, the lower its rating.

# $strut (name)
# $load (quantity)
# $governs (phrase)
# $capacity (quantity)
# $length (quantity)
over = Strut { $strut }: load up to { $load } ({ $governs }). Capacity { $capacity } at { $length }. Use a stronger or shorter strut, or add struts.

# $strut (name)
# $load (quantity)
# $governs (phrase)
# $use (quantity)
# $capacity (quantity)
# $length (quantity)
# $limit (quantity)
over-limit = Strut { $strut }: load up to { $load } ({ $governs }), { $use } of its capacity of { $capacity } at { $length }. The policy allows { $limit }.

# $strut (name)
# $load (quantity)
# $length (quantity)
no-rating = Strut { $strut }: capacity at { $length } not known, load up to { $load }. Take the rating from its manufacturer. This check has not passed.

title = Strap or chain overloaded
protects = A strap that breaks lets both strut bases go at once.

# $tie (phrase)
# $load (quantity)
# $governs (phrase)
# $sum (calculation)
# $capacity (quantity)
over = Pull on { $tie }: up to { $load } ({ $governs }; { $sum }). Its working load limit is { $capacity }. Use a stronger one, use two, or set the struts steeper.

# $tie (phrase)
# $load (quantity)
# $governs (phrase)
# $use (quantity)
# $capacity (quantity)
# $limit (quantity)
over-limit = Pull on { $tie }: up to { $load } ({ $governs }), { $use } of its working load limit of { $capacity }. The policy allows { $limit }.

# $tie (phrase)
# $load (quantity)
no-rating = Pull on { $tie }: up to { $load }, working load limit not known. Read its tag. This check has not passed.

### Words of the model in space: cases, what ends a push, where a number comes from.
### prefix: standing

# $vehicle (name)
nothing-holds = nothing holds { $vehicle } on this side
# $element (phrase)
reaches-its-rating = { $element } reaches its rated load
# $vehicle (name)
# $limit (quantity)
moves = { $vehicle } moves more than { $limit }
# $vehicle (name)
slides = { $vehicle } slides
# $vehicle (name)
tips = { $vehicle } tips over
# $case (phrase)
when = { " " }with { $case }
balance-in-space = from the balance of all forces and moments in space, with friction
pushed-in-space = greatest push that it held when pushed slowly, with the friction of the load that is there
# $vehicle (name)
coupling = coupling to { $vehicle } opens

# $factor (quantity)
sudden = sudden loss factor { $factor }

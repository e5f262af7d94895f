title = Rolls, slides or tips at a stage
protects = A vehicle may roll, slide or tip while supports and chocks are put in or taken out.

# $stage (phrase)
# $what (phrase)
# $grade (quantity)
# $when (message, optional)
rolls = After { $stage }, { $what } rolls on the grade of { $grade }{ $when }. Chock its wheels in both directions before this step.

# $stage (phrase)
# $what (phrase)
# $grade (quantity)
# $when (message, optional)
slides = After { $stage }, { $what } slides{ $when }. The grade is { $grade }. The friction of its supports does not hold it. Chock more axles, or anchor it uphill, before this step.

# $stage (phrase)
# $what (phrase)
# $when (message, optional)
falls = After { $stage }, nothing holds { $what } against tipping or dropping{ $when }. Set the supports that hold it before this step.

# $stage (phrase)
# $what (phrase)
# $when (message, optional)
moves = After { $stage }, { $what } moves more than the checks allow before its supports hold it{ $when }. Treat it as not held.

# $stage (phrase)
# $what (phrase)
# $when (message, optional)
unsolved = How { $what } stands after { $stage } could not be calculated{ $when }. Treat it as not held. This check has not passed.

# $vehicles (list)
# $done (count)
# $of (count)
left-out = { $vehicles }: loss of supports, sliding, tipping and side pushes were checked at { $done } of { $of } ends of the ranges. A worse one may exist. Weigh or measure what can be, or check fewer vehicles at a time. This check has not passed.

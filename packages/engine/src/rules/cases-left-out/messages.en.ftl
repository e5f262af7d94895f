# $vehicles (list)
# $done (count)
# $of (count)
load-cases = { $vehicles }: loss of supports, sliding and tipping were checked at { $done } of { $of } ends of the ranges. A worse one may exist. Weigh or measure what can be, or check fewer vehicles at a time. This check has not passed.

# $vehicles (list)
# $done (count)
# $of (count)
pushes = { $vehicles }: side pushes were checked at { $done } of { $of } ends of the ranges. A worse one may exist. Weigh or measure what can be, or check fewer vehicles at a time. This check has not passed.

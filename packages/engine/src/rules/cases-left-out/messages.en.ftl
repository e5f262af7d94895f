# $vehicles (list)
# $done (count)
# $of (count)
left-out = { $vehicles }: loss of supports, sliding, tipping and side pushes were checked at { $done } of { $of } ends of the ranges. A worse one may exist. Weigh or measure what can be, or check fewer vehicles at a time. This check has not passed.

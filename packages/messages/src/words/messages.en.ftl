### prefix: word

not-known = not known
# $first (text) - all but the last, with commas
# $last (text)
list-and = { $first } and { $last }
# $first (text)
# $last (text)
list-or = { $first } or { $last }
# $a (text)
# $b (text)
lesser = lesser of { $a } and { $b }
# $a (text)
# $b (text)
larger = larger of { $a } and { $b }
# $value (text)
# $step (text)
floor-to = { $value }, rounded down to a multiple of { $step }
# $low (text)
# $high (text)
range = { $low } to { $high }

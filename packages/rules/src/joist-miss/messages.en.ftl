title = Contact misses the captured part
protects = A contact between two joists meets only sheet metal or flooring and carries no load.

# $crib (name)
# $contact (count)
# $part (name)
# $off (quantity)
# $reach (quantity)
# $advice (message)
misses = Crib { $crib }: contact { $contact } misses the { $part } by { $off }. The limit is { $reach }. { $advice }

# $crib (name)
nothing = Crib { $crib } captures no part. State the part that its top meets.

# $part (name)
to-meet = Part to capture: { $part }.

# $place (message)
move-it = Move the crib to { $place }.

# $back (quantity)
at-center = { $back }, center

# $back (quantity)
# $off (quantity)
at-driver-side = { $back }, driver side { $off }

# $back (quantity)
# $off (quantity)
at-passenger-side = { $back }, passenger side { $off }

look-again = No place nearby puts every contact under its part. Try another layout.

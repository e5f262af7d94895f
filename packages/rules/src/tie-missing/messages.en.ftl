title = Strut base not strapped
protects = A leaning strut pushes its own base out. Without a strap the base slides away and the load comes down.

# $strut (name)
# $angle (quantity)
# $advice (message)
untied = Strut { $strut }: base not strapped. At { $angle } the load pushes the base out. { $advice }

# $other (name)
tie-across = Run a strap from its base to the base of { $other }.

tie-somewhere = Run a strap from its base to the base of a strut on the other side, or to an anchor.

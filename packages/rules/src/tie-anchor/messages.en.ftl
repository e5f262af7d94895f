title = Strap or chain on an anchor that may not hold
protects = A strap holds no more than its anchor holds.

# $tie (phrase)
# $anchor (name)
holds-unknown = Anchor { $anchor } of { $tie }: capacity not known. Write its capacity after `holds`, or strap base to base. This check has not passed.

# $tie (phrase)
# $anchor (name)
# $load (quantity)
# $holds (quantity)
holds-less = Anchor { $anchor } of { $tie }: pull up to { $load }. Capacity { $holds }. Use a stronger anchor.

# $tie (phrase)
# $part (name)
# $vehicle (name)
moves = Anchor of { $tie }: the { $part } of the { $vehicle } moves. Anchor it to the frame.

# $tie (phrase)
# $part (name)
# $vehicle (name)
no-part = Anchor of { $tie }: the { $vehicle } has no { $part }.

# $tie (phrase)
not-there = Anchor of { $tie }: not in this plan.

# $tie (phrase)
same-end = Both ends of { $tie } are at the same place. It holds nothing.

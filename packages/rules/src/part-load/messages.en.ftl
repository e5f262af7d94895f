title = Part overloaded, or too narrow on its timber
protects = A part that carries more than its rating bends or tears. A part narrower than the timber cuts into it.

# $part (name)
# $vehicle (name)
# $support (phrase)
# $load (quantity)
# $rating (quantity)
# $governs (phrase)
over-rating = Load on the { $part } of the { $vehicle } from { $support }: up to { $load } ({ $governs }). Rating { $rating }. Spread the load over other parts, or use a stronger part.

# $part (name)
# $vehicle (name)
# $supports (list)
# $load (quantity)
# $rating (quantity)
over-together = Load on the { $part } of the { $vehicle } from { $supports } together: { $load } as built. Rating { $rating }. Spread the load over other parts, or use a stronger part.

# $part (name)
# $vehicle (name)
# $supports (list)
# $load (quantity)
# $rating (quantity)
over-at-worst = Loads on the { $part } of the { $vehicle } from { $supports }, each at its worst: { $load }. Rating { $rating }. They may not all come at once. Spread the load over other parts, or use a stronger part.

# $part (name)
# $vehicle (name)
# $support (phrase)
# $rating (quantity)
unknown = Load on the { $part } of the { $vehicle } from { $support }: not known. Rating { $rating }. Give the weight and the center of gravity, and check that the supports hold the vehicle. This check has not passed.

# $crib (name)
# $contact (count)
# $part (name)
# $vehicle (name)
# $load (quantity)
# $governs (phrase)
# $capacity (quantity)
# $sum (calculation)
narrow = Crib { $crib }, contact { $contact }: load up to { $load } ({ $governs }). Its timber is wider than the { $part } of the { $vehicle }. Bearing capacity { $capacity } ({ $sum }). Put a steel plate between part and timber, capture a wider part, or spread the load over more contacts.

# $lower (name)
# $upper (name)
# $load (quantity)
vehicle-unknown = The { $upper } rests on the { $lower } with up to { $load }. Strength of the { $lower } not known. It is counted as a support that can be lost.

# $part (name)
# $vehicle (name)
# $support (phrase)
# $load (quantity)
base-unknown = Load on the { $part } of the { $vehicle } from { $support }: up to { $load }. Rating not stated, strength not checked.

rating-here = The rating is set here.

part-here = The part is described here.



title = Strut base slides
protects = A base that slides takes the strut away as soon as the load comes on.

# $strut (name)
# $angle (quantity)
# $needed (quantity)
# $sum (calculation)
# $friction (quantity)
slides = Strut { $strut }: its base slides under any load. At { $angle } it needs friction of { $needed } ({ $sum }). The friction that counts is { $friction }. Without a strap the strut holds nothing. Strap its base.

# $strut (name)
# $tie (phrase)
tied-aside = Strut { $strut }: { $tie } pulls across the direction in which the base slides and does not hold it. Run it back toward the vehicle, to the base on the other side.

title = Strut too short or too long
protects = A crew extends a strut that does not reach past its last hole, or sets it on something loose.

# $strut (name)
# $length (quantity)
# $sum (calculation)
# $gear (name)
# $longest (quantity)
too-long = Strut { $strut } needs { $length } from base to head ({ $sum }). The longest reach of { $gear } is { $longest }. Use a longer strut, or set the base closer.

# $strut (name)
# $length (quantity)
# $sum (calculation)
# $gear (name)
# $shortest (quantity)
too-short = Strut { $strut } has { $length } from base to head ({ $sum }). The shortest length of { $gear } is { $shortest }. Use a shorter strut, or set the base farther out.

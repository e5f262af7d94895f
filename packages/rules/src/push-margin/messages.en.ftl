title = Holds too small a side push
protects = A tool, a shifting load or a second vehicle pushes the vehicle sideways, and it slides or tips over.

# $toward (phrase)
# $height (quantity)
# $vehicle (name)
# $share (quantity)
# $sum (calculation)
# $limit (quantity)
# $first (message, optional) - what fails first
too-little = A side push { $toward } at { $height }: { $vehicle } and its supports hold { $share } of its weight ({ $sum }). The policy requires { $limit }. { $first }

# $how (phrase)
first = Fails first: { $how }.

# $why (phrase)
unknown = Side push not calculated: { $why }. This check has not passed.

# $limit (quantity)
set-here = The push margin is set here: { $limit }.

title = Vehicle slides down the grade
protects = On a grade the weight pulls the vehicle downhill. If too few wheels are chocked, the chocked wheels slide with the vehicle.

# $grade (quantity)
# $vehicle (text)
# $demand (quantity)
# $sum (calculation) - of the demand
# $capacity (quantity)
# $hold (calculation) - of the capacity
slides = On a grade of { $grade }, the { $vehicle } pulls { $demand } downhill ({ $sum }). Its chocked wheels hold { $capacity } ({ $hold }). Chock more axles, or rig a line uphill.

# $grade (quantity)
grade-here = The grade is set here: { $grade }.

grade-unsaid = Grade not stated. Slide check not run, and all other checks assume level ground. Measure the grade and state it: `grade 0 %` or `grade 2 % toward rear`. This check has not passed.

# $grade (quantity)
direction-unsaid = Direction of the { $grade } grade not stated. All checks assume that it slopes down toward the rear. The other directions are not checked. State it: `grade { $grade } toward rear`. This check has not passed.

# $grade (quantity)
# $vehicle (text)
# $demand (quantity)
# $sum (calculation) - of the demand
# $capacity (quantity)
# $hold (calculation) - of the capacity
slides-braked = On a grade of { $grade }, the { $vehicle } pulls { $demand } downhill ({ $sum }). Its chocked and braked wheels hold { $capacity } ({ $hold }). Chock more axles, or rig a line uphill.

brake-share = share of its load that a parking brake holds

load-on-brakes = least load on braked wheels that are not chocked

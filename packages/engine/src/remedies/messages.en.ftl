### Changes that are offered to put a plan right.
### prefix: remedy

# $strut (name)
# $other (name)
strap-across = Strap the bases of { $strut } and { $other } together

# $strut (name)
# $part (name)
# $vehicle (name)
strap-to-part = Strap the base of { $strut } to the { $part } of the { $vehicle }

# $strut (name)
# $anchor (name)
strap-to-anchor = Strap the base of { $strut } to { $anchor }

# $new (name)
# $strut (name)
mirror-strut = Set strut { $new } on the other side, opposite { $strut }, and strap their bases together

# $support (phrase)
# $place (name)
move = Move { $support } to { $place }

# $support (phrase)
# $parts (list)
# $vehicle (name)
capture = Put { $support } under the { $parts } of the { $vehicle }

# $crib (name)
# $layout (name)
# $timber (phrase)
# $courses (count)
build = Build crib { $crib } { $layout } of { $timber }, { $courses } courses

# $step (count)
# $other (count)
step-after = Do step { $step } after step { $other }

# $step (count)
# $other (count)
step-before = Do step { $step } before step { $other }

# $support (phrase)
step-for = Add { $support } to the steps

# $support (phrase)
step-lock = Lock { $support } in the steps

# $vehicle (name)
# $supports (list)
step-capture = Add a step that stabilizes the { $vehicle } with { $supports }

# $gear (name)
# $support (phrase)
use-gear = Use { $gear } for { $support }

# $count (count)
# $struts (list)
# $like (list)
# $far (quantity)
twin-front =
    { $count ->
        [one] Set one more strut, { $struts }, like { $like }, { $far } farther to the front
       *[other] Set { $count } more struts, { $struts }, like { $like }, { $far } farther to the front
    }

# $count (count)
# $struts (list)
# $like (list)
# $far (quantity)
twin-rear =
    { $count ->
        [one] Set one more strut, { $struts }, like { $like }, { $far } farther to the rear
       *[other] Set { $count } more struts, { $struts }, like { $like }, { $far } farther to the rear
    }

# $vehicle (name)
# $anchor (name)
# $holds (quantity)
# $toward (phrase)
strap-vehicle = Strap the { $vehicle } to an anchor { $anchor } that holds { $holds }, { $toward }: find one, such as a rig or a bollard

title = Courses that cannot be built
protects = A crib with one timber in a course rolls over. A crib with more timbers than fit cannot be built as drawn.

# $crib (name)
# $timbers (count)
one-timber = Crib { $crib } has { $timbers ->
        [one] 1 timber
       *[other] { $timbers } timbers
    } in a course. The minimum is 2 in every course. Use a layout of 2 by 2.

# $crib (name)
# $timbers (count)
# $width (quantity)
# $room (quantity)
# $most (count)
no-room = Crib { $crib }: { $timbers } timbers of { $width } do not fit side by side in { $room }. The limit is { $most }.

# $crib (name)
# $length (quantity)
# $overhang (quantity)
no-width = Crib { $crib }: timbers { $length } long with an overhang of { $overhang } leave no width between the contacts. Use longer timbers or less overhang.

# $crib (name)
# $courses (count)
no-courses = Crib { $crib } has { $courses } courses. The minimum is 1.

# $crib (name)
# $courses (count)
# $whole (count)
part-course = Crib { $crib } has { $courses } courses. The number of courses must be whole. Use { $whole }.

# $layout (name)
fix-layout = Use a layout of { $layout }

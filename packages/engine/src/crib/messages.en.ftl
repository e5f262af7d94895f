### Packing on a crib: shims and wedges.
### prefix: packing

# $courses (name)
# $shims (name)
fix-both = Use { $courses } courses and { $shims } of shims
# $courses (name)
fix-courses = Use { $courses } courses and no shims
# $courses (name)
# $shims (name)
use-both = Use { $courses } courses and { $shims } of shims.
# $courses (name)
use-courses = Use { $courses } courses and no shims.
measure = Measure the gap. Use more courses, or a course of another timber, in place of shims.

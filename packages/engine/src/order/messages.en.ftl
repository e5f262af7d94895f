### prefix: step

size-up = size up
chock = chock
capture = capture
build = build
slide = slide
set = set
lock = lock
tension = tension
check = check
remove = remove
# $action (message)
# $targets (list)
work = { $action } { $targets }
# $action (message)
# $targets (list)
# $with (list)
work-with = { $action } { $targets } with { $with }
# $number (count)
# $work (message)
numbered = step { $number }: { $work }
# $steps (list)
untimed = steps without a time count as none: { $steps }

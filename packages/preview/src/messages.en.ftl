### The words of the panel that stand round a drawing. Words in braces that stay, such as { $reason }, are filled in
### by the page.
### prefix: panel

waiting = Waiting for the plan.
views = Views
plan = Plan
what-if = What if
nothing-lost = nothing lost
stages = Stages of the build
stage = Stage
stage-before = Previous stage
stage-next = Next stage
# $number (name)
# $total (name)
# $title (name)
stage-of = { $number } of { $total }: { $title }
finished = finished build
play = Play
stop = Stop
choose = select
crib = crib
strut = strut
# $first (name)
# $second (name)
either = { $first } or { $second }
zoom = Zoom
zoom-in = Zoom in
zoom-out = Zoom out
fit = Fit
fit-all = Fit the whole drawing
rotate = Rotate
rotate-tools = Viewpoint
no-perspective = Without perspective
from-corner = From a corner
from-above = From above
from-side = From the side
from-behind = From behind
three-d = The layout in 3D. The flat drawing and the words below it say the same.
# $reason (name)
three-d-failed = The 3D view could not be opened here ({ $reason }). The flat drawing shows the same.
more = More
key-tab = Tab, arrows
key-tab-does = go from shape to shape
key-page = Page Down, Page Up
key-page-does = every shape in turn
key-enter = Enter
key-enter-does = go to its line in the text
key-alt = Alt+↑  Alt+↓
key-alt-does = one course more or less on a crib
key-stage = ,  .
key-stage-does = previous or next stage
key-zoom = +  -  0
key-zoom-does = zoom in, out, fit
key-drag = Drag
key-drag-does = a crib, a strut base or a vehicle: the text changes
key-escape = Escape
key-escape-does = cancel a drag
export = Save or copy the drawing
# $format (name)
save-as = Save as { $format }
copy = Copy
copy-picture = Copy as a picture
copied = The drawing is on the clipboard as a picture.
# $reason (name)
no-clipboard = The picture is not on the clipboard: this window does not allow it ({ $reason }). Save it as a PNG file instead.
# $reason (name)
no-picture = The picture could not be made: { $reason }. Save it as SVG instead.
close-notice = Close this notice
in-words = In words
not-checked = Not checked yet. Loads and limits are being calculated.
push-pending = The side push is still being checked.
nothing-found = The checks found nothing. They do not see the scene.
# $count (count)
unsafe = { $count } unsafe
# $count (count)
not-run =
    { $count ->
        [one] 1 check could not run
       *[other] { $count } checks could not run
    }
# $count (count)
warnings =
    { $count ->
        [one] 1 warning
       *[other] { $count } warnings
    }
# $count (count)
notes =
    { $count ->
        [one] 1 note
       *[other] { $count } notes
    }
# $count (count)
accepted = { $count } accepted

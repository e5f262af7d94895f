### prefix: expectation

safe = nothing unsafe
# $rule (name)
# $on (text)
finding = { $rule } on { $on }
# $rule (name)
finding-anywhere = { $rule }
# $figure (name)
# $on (text)
# $value (quantity, optional)
figure = { $figure } on { $on } { $value }
# $element (text)
# $contact (count)
contact-of = { $element } contact { $contact }
held = held
# $count (count)
# $rules (list)
unsafe = { $count } unsafe: { $rules }
# $count (count)
# $rules (list)
not-run = { $count ->
        [one] 1 check
       *[other] { $count } checks
    } could not run: { $rules }
# $rule (name)
not-found = { $rule } found nothing there
# $figure (name)
# $on (text)
no-figure = { $on } has no { $figure }
# $figure (name)
# $value (quantity)
figure-is = { $figure } is { $value }
partial = the plan was not read whole

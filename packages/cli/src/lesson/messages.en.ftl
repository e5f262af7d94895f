### Headings of a lesson's handout and of its key.
### prefix: handout

# $lesson (name)
key-title = { $lesson }: answer key
not-whole = NOT READ WHOLE: part of this lesson may be missing. Do not hand it out.
# $points (count)
student = Name ____________________  Date ____________  Points ______ of { $points }
# $points (count)
points =
    { $points ->
        [one] 1 point
       *[other] { $points } points
    }
# $why (message)
no-key = No answer key: { $why }

title = Slid-in crib not checked
protects = The far contacts of a crib that was slid in are out of sight. They may not meet the part that they are meant to carry.

# $crib (phrase)
unchecked = Crib { $crib } is slid in, so its far contacts are out of sight. No later step checks it. Add a step that checks crib { $crib } from the other side.

### The drawing in words, for a reader who does not see it.
### prefix: spoken

# $thing (name)
# $back (name)
# $side (text)
placed = { $thing }, { $back } back from the front, { $side }
centerline = on the centerline
# $distance (name)
driver-side = driver side { $distance }
# $distance (name)
passenger-side = passenger side { $distance }
loads-finished = Loads of the finished work, as built
loads-at-stage = Loads at this stage, as built
# $loss (phrase)
loads-if-lost = Loads if this is lost: { $loss }
# $elements (list)
no-load = Carrying no load: { $elements }

lock-pinned = pinned
lock-collar = lock collar
lock-pump-only = pump only

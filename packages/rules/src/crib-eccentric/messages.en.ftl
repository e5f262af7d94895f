title = Crib loaded off center
protects = A crib loaded off center leans to that side. Only the loaded contacts carry.

# $crib (name)
# $off (quantity)
# $loaded (count)
# $contacts (list) - numbers of the loaded contacts
# $kern (quantity)
# $sum (calculation)
one-side = Crib { $crib }: load { $off } off center ({ $loaded ->
        [one] contact { $contacts }
       *[other] contacts { $contacts }
    } loaded). The limit is { $kern } ({ $sum }). Beyond it the far side lifts and the near side carries all the load. Capture the other side too.

heading = Site

# $address (name)
address = Address: { $address }

# $contact (phrase)
contact = Contact: { $contact }

# $access (phrase)
access = Access: { $access }

# $hazard (phrase)
hazard = Hazard: { $hazard }

# $dock (name)
# $facts (list)
dock = Dock { $dock }: { $facts }

# $height (quantity)
height = floor { $height } above the yard

height-not-stated = height of the floor not stated

# $doors (name)
doors = doors { $doors }

# $grade (quantity)
apron = apron slopes down { $grade } toward the dock

# $surfaces (phrase)
surfaces = Surfaces: { $surfaces }

# $fleet (phrase)
fleet = Vehicles: { $fleet }

# $units (phrase)
responding = Responding first: { $units }

# $plans (phrase)
other-plans = Other plans for this site: { $plans }

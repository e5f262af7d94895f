title = Size-up incomplete
protects = Fuel, batteries, cargo and the energy stored in brakes injure crews who did not check for them.

fuel = Size-up: fuel not stated. Check for leaks and write what was found.
battery = Size-up: batteries not stated. Check for high voltage and write what was found.
cargo = Size-up: cargo not stated. Find out what it is and whether it can shift.
brakes = Size-up: brakes not stated. Air brakes and spring brakes store energy. Write how they are set.
fix-add = Add the line to the size-up

### prefix: sheet

# $labels (list)
no-room = No room beside the shape: { $labels }.
measured-from = All places are measured from this vehicle.
